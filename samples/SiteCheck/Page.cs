using System;
using System.Collections.Generic;
using System.Text;

namespace SiteCheck;

/// <summary>Lines of text that fit a width, wrapped between words; a longer word stands whole.</summary>
internal sealed class Page(int width)
{
    private readonly List<PageLine> _lines = [];

    public int Width { get; } = width;

    public IReadOnlyList<PageLine> Lines => _lines;

    public void Blank() => _lines.Add(default);

    /// <summary>A line as it is.</summary>
    public void Line(string text, ConsoleColor? color = null) => _lines.Add(new PageLine(text, color, ""));

    /// <summary>Running text, all of it set in from the left.</summary>
    public void Text(string text, int indent = 0) => Labeled("", color: null, text, indent);

    /// <summary>A label, and running text beside it.</summary>
    public void Labeled(string label, ConsoleColor? color, string text, int indent)
    {
        string lead = label.PadRight(indent);
        foreach (string line in Wrapped(text, Width - indent))
        {
            _lines.Add(new PageLine(lead, color, line));
            lead = new string(' ', indent);
        }
    }

    /// <summary>A text in lines no longer than a width, broken between words; a number stays with its unit.</summary>
    public static IEnumerable<string> Wrapped(string text, int width)
    {
        var line = new StringBuilder();
        foreach (string word in Unbroken(text.Split(' ', StringSplitOptions.RemoveEmptyEntries)))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line.ToString();
                line.Clear();
            }

            if (line.Length > 0) line.Append(' ');
            line.Append(word);
        }

        yield return line.ToString();
    }

    private static IEnumerable<string> Unbroken(string[] words)
    {
        for (int i = 0; i < words.Length; i++)
        {
            bool isNumber = char.IsAsciiDigit(words[i][^1]);
            yield return isNumber && i + 1 < words.Length && IsUnit(words[i + 1].TrimEnd('.', ',', ';', ':', ')')) ? $"{words[i]} {words[++i]}" : words[i];
        }
    }

    private static bool IsUnit(string word) => word is "V" or "A" or "W" or "VA" or "\u03A9" or "%" or "\u00B0C" or "m" or "ft" or "mm2" or "AWG" or "s" or "ms" or "min" or "h";

    /// <summary>All of it, without colors.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        foreach (PageLine line in _lines) text.Append(line.ToString()).Append(Environment.NewLine);
        return text.ToString();
    }
}
