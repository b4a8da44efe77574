using System;
using System.IO;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace CamPower.Files.Formats;

/// <summary>The output of a site that is being written, with the names by which its parts refer to one another.</summary>
internal sealed class SiteWriter
{
    // A site file is no web page: letters of every language stay as they are.
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private SiteWriter(Utf8JsonWriter json, PartNames names) => (Json, Names) = (json, names);

    internal Utf8JsonWriter Json { get; }
    internal PartNames Names { get; }

    /// <summary>The text of a value, ended by a line feed.</summary>
    internal static string Text<T>(Format<T> format, T value, PartNames names) =>
        Text(json => format.Write(new SiteWriter(json, names), value));

    /// <summary>Whatever is written, as text that ends with a line feed.</summary>
    internal static string Text(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Options)) write(json);
        return Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length) + "\n";
    }

    /// <summary>Writes a name.</summary>
    /// <exception cref="ArgumentException">The name is no valid Unicode, or holds a character that no name in a file may hold.</exception>
    internal void WriteName(string name)
    {
        if (NameFormat.SteeringCharacterOf(name) is string character)
        {
            throw new ArgumentException(
                $"A name holds the control or direction character {character}: a site file cannot express it.", nameof(name));
        }

        // The writer would put another character in the place of half a pair.
        for (int i = 0; i < name.Length; i++)
        {
            if (!char.IsSurrogate(name[i]) || char.IsSurrogatePair(name, i++)) continue;
            throw new ArgumentException($"The name '{name}' holds half of a surrogate pair: it is no valid Unicode.", nameof(name));
        }

        Json.WriteStringValue(name);
    }
}
