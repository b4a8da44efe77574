using System.Linq;
using System.Text;
using System.Xml;

namespace CamPower.Reports;

/// <summary>Names as people typed them, fit for a page.</summary>
internal static class PlainText
{
    private const char Replacement = '\uFFFD';

    /// <summary>On one line, with a replacement character for what no XML document may hold.</summary>
    internal static string Of(string text)
    {
        var clean = new StringBuilder(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1])) clean.Append(text, i++, 2);
            else clean.Append(char.IsWhiteSpace(text[i]) ? ' '
                : XmlConvert.IsXmlChar(text[i]) && !char.IsControl(text[i]) ? text[i]
                : Replacement);
        }

        return clean.ToString();
    }

    /// <summary>First letter upper case.</summary>
    internal static string Sentence(string text) => string.Concat(text.Take(1).Select(char.ToUpperInvariant)) + text[1..];
}
