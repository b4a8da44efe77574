using System;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A wire size as the trade names it, read and written by <see cref="WireSize"/> itself.</summary>
internal sealed class WireSizeFormat : ITextFormat<WireSize>
{
    public string Description => "a wire size in AWG or mm2, such as 18 AWG, 2/0 AWG or 1.5 mm2";

    public JsonObject Schema => new()
    {
        ["type"] = "string",
        ["description"] = Description,
        ["pattern"] = @"^\s*([0-9]+(/0)?\s*[Aa][Ww][Gg]|[0-9.]+\s*[Mm][Mm](2|²))\s*$",
    };

    public WireSize Parse(string text) => WireSize.TryParse(text, out WireSize size)
        ? size
        : throw new FormatException($"{Phrase.Quoted(text)} is not {Description}");

    // Below 0.0001 mm2 and from 1e15 mm2 on, the text of a size has an exponent, which no size is read from.
    public string Format(WireSize value) => WireSize.TryParse(value.ToString(), out _)
        ? value.ToString()
        : throw new NotSupportedException($"A site file cannot express a wire size of {value}.");
}
