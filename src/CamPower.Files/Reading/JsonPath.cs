using System;
using System.Globalization;
using System.Linq;
using System.Text;

namespace CamPower.Files.Reading;

/// <summary>A path into a JSON file, as RFC 9535 writes it: $.runs[3].from['odd name'].</summary>
internal sealed class JsonPath
{
    private JsonPath(JsonPath? parent, string text)
    {
        Parent = parent;
        Text = text;
    }

    internal static JsonPath Root { get; } = new(null, "$");

    internal JsonPath? Parent { get; }

    internal string Text { get; }

    internal JsonPath Member(string name) => new(this, Text + (IsPlain(name) ? "." + name : $"['{Escaped(name)}']"));

    internal JsonPath Item(int index) => new(this, Text + "[" + index.ToString(CultureInfo.InvariantCulture) + "]");

    public override string ToString() => Text;

    private static bool IsPlain(string name) =>
        name.Length > 0 && !char.IsAsciiDigit(name[0]) && name.All(c => char.IsAsciiLetterOrDigit(c) || c == '_');

    private static string Escaped(string name)
    {
        var text = new StringBuilder();
        foreach (char c in name)
        {
            if (c is '\'' or '\\') text.Append('\\').Append(c);
            else if (c < ' ') text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}");
            else text.Append(c);
        }

        return text.ToString();
    }
}
