using System;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A wire size as the trade names it, read and written by <see cref="WireSize"/> itself.</summary>
internal sealed class WireSizeFormat() : TextFormat<WireSize>(
    "a wire size in AWG, mm2, kcmil or mm wire, such as 18 AWG, 2/0 AWG, 1.5 mm2, 250 kcmil or 0.8 mm wire", WireSize.Awg(18))
{
    private const string Metric = "[Mm][Mm](2|²)|[Mm][Mm] [Ww][Ii][Rr][Ee]", Mils = "[Kk][Cc][Mm][Ii][Ll]|[Mm][Cc][Mm]";

    internal override JsonObject Schema() => Matching(@$"\s*([0-9]+(/0)?\s*[Aa][Ww][Gg]|[0-9.]+\s*({Metric}|{Mils}))\s*");

    internal override WireSize Parse(string text) => WireSize.TryParse(text, out WireSize size)
        ? size
        : throw new FormatException($"{Phrase.Quoted(text)} is not {Description}");

    internal override string Text(WireSize value) => value.ToString();
}
