using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;

namespace CamPower.Tests.Reference;

/// <summary>Reads the comma-separated tables that are embedded in this assembly: one record a line, fields quoted where they hold a comma.</summary>
internal static class Csv
{
    internal static IEnumerable<string> Names =>
        typeof(Csv).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(".csv", System.StringComparison.Ordinal)).Order(System.StringComparer.Ordinal);

    /// <summary>The records of a table, each by its column names.</summary>
    internal static IEnumerable<IReadOnlyDictionary<string, string>> Read(string name)
    {
        using Stream stream = typeof(Csv).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        List<string> header = Fields(reader.ReadLine()!);
        while (reader.ReadLine() is { } line)
        {
            List<string> fields = Fields(line);
            Assert.True(header.Count == fields.Count, $"{name} has a line of {fields.Count} fields: {line}");
            yield return header.Zip(fields).ToDictionary(p => p.First, p => p.Second);
        }
    }

    private static List<string> Fields(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (c == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"') field.Append(line[++i]);
            else if (c == '"') quoted = !quoted;
            else if (c == ',' && !quoted) { fields.Add(field.ToString()); field.Clear(); }
            else field.Append(c);
        }

        fields.Add(field.ToString());
        return fields;
    }
}
