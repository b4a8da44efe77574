using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using OxyPlot;

namespace CamPower.Reports.Charts;

/// <summary>Width of text, the same on every machine, whatever fonts it has.</summary>
internal sealed class TextRoom(double width, double height) : PdfRenderContext(width, height, OxyColors.Transparent)
{
    private const double CapitalHeight = 0.729, LineHeight = 1.2, BoldFactor = 1.12, BoldWeight = 500, PerMille = 1e-3;

    // Not in the table: letters with marks, Greek, Cyrillic; and what is as wide as it is high.
    private const int OtherLetter = 750, Square = 1060, FirstSquare = 0x1100;

    private const char First = ' ';

    // Advance widths of DejaVu Sans 2.37, read from its table hmtx, in thousandths of the size, from the space to the tilde:
    // with Verdana it is the widest of the usual sans-serif fonts.
    private static readonly int[] Widths =
    [
        317, 400, 459, 837, 636, 950, 779, 274, 390, 390, 500, 837, 317, 360, 317, 336, 636, 636, 636, 636, 636, 636, 636, 636, 636, 636,
            336, 336, 837, 837, 837, 530,
        1000, 684, 686, 698, 770, 631, 575, 774, 751, 294, 294, 655, 557, 862, 748, 787, 603, 787, 694, 634, 610, 731, 684, 988, 685, 610,
            685, 390, 336, 390, 837, 500,
        500, 612, 634, 549, 634, 615, 352, 634, 633, 277, 277, 579, 277, 974, 633, 611, 634, 634, 411, 520, 392, 633, 591, 817, 591, 591,
            524, 636, 336, 636, 837,
    ];

    /// <summary>A text on one line, cut with an ellipsis where it is wider than there is room.</summary>
    internal static string Fitted(string text, double room, double fontSize, double fontWeight = FontWeights.Normal)
    {
        var characters = new StringInfo(PlainText.Of(text));
        string fitted = characters.String;
        for (int kept = characters.LengthInTextElements - 1; kept > 0 && Measured(fitted, fontSize, fontWeight).Width > room; kept--)
        {
            fitted = characters.SubstringByTextElements(0, kept) + "…";
        }

        return fitted;
    }

    /// <summary>The text in lines that fit the room, broken between words; one word that is too long ends in an ellipsis.</summary>
    internal static IReadOnlyList<string> Lines(string text, double room, double fontSize, double fontWeight = FontWeights.Normal)
    {
        var lines = new List<string>();
        foreach (string word in PlainText.Of(text).Split(' '))
        {
            string longer = lines.Count == 0 ? word : $"{lines[^1]} {word}";
            if (lines.Count > 0 && Measured(longer, fontSize, fontWeight).Width <= room) lines[^1] = longer;
            else lines.Add(Fitted(word, room, fontSize, fontWeight));
        }

        return lines;
    }

    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        Measured(text, fontSize, fontWeight);

    private static OxySize Measured(string text, double fontSize, double fontWeight)
    {
        if (string.IsNullOrEmpty(text)) return OxySize.Empty;
        double size = fontSize * (fontWeight > BoldWeight ? BoldFactor : 1);
        // From the base line to the top of a capital: what is centered on a mark is centered by that.
        string[] lines = text.Split('\n');
        return new OxySize(lines.Max(l => l.EnumerateRunes().Sum(WidthOf)) * PerMille * size,
            (CapitalHeight + ((lines.Length - 1) * LineHeight)) * fontSize);
    }

    private static int WidthOf(Rune rune)
    {
        int index = rune.Value - First;
        if (index >= 0 && index < Widths.Length) return Widths[index];
        return rune.Value < FirstSquare ? OtherLetter : Square;
    }
}
