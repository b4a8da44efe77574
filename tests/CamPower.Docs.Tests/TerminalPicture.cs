using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using System.Xml.Linq;
using static System.FormattableString;

namespace CamPower.Docs.Tests;

/// <summary>What a terminal shows after a command, as a picture: the command, its first lines, and nothing that it did not print.</summary>
/// <remarks>No font is in it. Every line is stretched to the width that its characters have in a font of fixed width.</remarks>
internal static class TerminalPicture
{
    private const double CharacterWidth = 7.8, LineHeight = 17, Border = 14;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    internal static string Of(string title, string command, string printed, int lines = int.MaxValue)
    {
        string[] all = printed.TrimEnd().Split('\n');
        List<string> shown = [$"$ {command}", .. all.Take(lines).Select(l => l.TrimEnd())];
        if (all.Length > lines) shown.Add(Invariant($"[{all.Length - lines} lines more]"));
        double width = (2 * Border) + (CharacterWidth * shown.Max(l => l.Length)), height = (2 * Border) + (LineHeight * shown.Count);
        return new XElement(Svg + "svg", new XAttribute("viewBox", Invariant($"0 0 {width:0.#} {height:0.#}")), new XAttribute("width", Invariant($"{width:0.#}")),
            new XAttribute("height", Invariant($"{height:0.#}")), new XAttribute("role", "img"),
            new XElement(Svg + "title", title),
            new XElement(Svg + "rect", new XAttribute("width", "100%"), new XAttribute("height", "100%"), new XAttribute("rx", "6"), new XAttribute("fill", "#1b1f24")),
            new XElement(Svg + "g", new XAttribute("font-family", "DejaVu Sans Mono, Consolas, Menlo, monospace"), new XAttribute("font-size", "13"), new XAttribute("fill", "#e8e8e8"),
                shown.Select(Line))) + "\n";
    }

    // The blanks at its beginning are room, not text: not every program keeps them.
    private static XElement? Line(string line, int index)
    {
        string text = line.TrimStart();
        if (text.Length == 0) return null;
        return new XElement(Svg + "text",
            new XAttribute("x", Invariant($"{Border + (CharacterWidth * (line.Length - text.Length)):0.#}")),
            new XAttribute("y", Invariant($"{Border + (LineHeight * index) + 12.5:0.#}")),
            new XAttribute("textLength", Invariant($"{CharacterWidth * text.Length:0.#}")),
            index == 0 ? new XAttribute("font-weight", "bold") : null,
            text.Replace(' ', '\u00a0'));
    }
}
