using System;
using System.Collections;
using System.IO;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CamPower.Files.Entries;

namespace CamPower.Files.Writing;

/// <summary>Writes entries as JSON by what is known of their types: the reverse of the reader.</summary>
internal static class EntryWriter
{
    // A site file is no web page: letters of every language stay as they are.
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The text of an entry of a known type, ended by a line feed.</summary>
    internal static string Text(object entry)
    {
        using var bytes = new MemoryStream();
        using (var writer = new Utf8JsonWriter(bytes, Options))
        {
            Write(writer, SiteJsonContext.Default.GetTypeInfo(entry.GetType())!, entry);
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter writer, JsonTypeInfo type, object value)
    {
        if (value is IHasTextForm entry && entry.WriteText() is string text) writer.WriteStringValue(text);
        else if (type.Kind == JsonTypeInfoKind.Object) WriteObject(writer, type, value);
        else if (value is string name) writer.WriteStringValue(Checked(name));
        else if (type.Kind == JsonTypeInfoKind.Enumerable) WriteList(writer, type, (IList)value);
        else JsonSerializer.Serialize(writer, value, type);
    }

    private static void WriteObject(Utf8JsonWriter writer, JsonTypeInfo type, object entry)
    {
        writer.WriteStartObject();
        foreach (JsonPropertyInfo property in type.Properties)
        {
            if (property.Get!(entry) is not object value) continue;
            writer.WritePropertyName(property.Name);
            Write(writer, type.Options.GetTypeInfo(value.GetType()), value);
        }

        writer.WriteEndObject();
    }

    // The writer would put another character in the place of half a pair.
    private static string Checked(string name)
    {
        for (int i = 0; i < name.Length; i++)
        {
            if (!char.IsSurrogate(name[i])) continue;
            if (!char.IsSurrogatePair(name, i++)) throw new ArgumentException($"The name '{name}' holds half of a surrogate pair: it is no valid Unicode.", nameof(name));
        }

        return name;
    }

    private static void WriteList(Utf8JsonWriter writer, JsonTypeInfo type, IList list)
    {
        writer.WriteStartArray();
        foreach (object item in list) Write(writer, type.Options.GetTypeInfo(item.GetType()), item);
        writer.WriteEndArray();
    }
}
