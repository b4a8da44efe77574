using System.Text.Json.Serialization;

namespace CamPower.Files.Formats;

/// <summary>A value that a site file writes as text.</summary>
[JsonConverter(typeof(WrittenConverterFactory))]
internal sealed class Written<T>(T value)
{
    internal T Value { get; } = value;
}
