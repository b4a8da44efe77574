using System;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CamPower.Files.Formats;

/// <summary>Between a <see cref="Written{T}"/> and its text.</summary>
internal sealed class WrittenConverter<T>(ITextFormat<T> format) : JsonConverter<Written<T>>, IWrittenConverter
{
    public ITextFormat Format => format;

    public override Written<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        new(format.Parse(reader.GetString()!));

    public override void Write(Utf8JsonWriter writer, Written<T> value, JsonSerializerOptions options) =>
        writer.WriteStringValue(format.Format(value.Value));
}
