using System.Collections.Generic;
using System.Linq;

namespace CamPower.Circuits;

/// <summary>The standard sizes of each series, thinnest first.</summary>
internal static class StandardSizeList
{
    private const int ThinnestAwg = 44, ThickestAwg = -3;

    // Nominal cross-sections of IEC 60228. [mm²]
    private static readonly double[] MetricAreas =
        [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300, 400, 500, 630, 800, 1000];

    internal static IEnumerable<WireSize> Of(WireSizeSeries series) => series switch
    {
        WireSizeSeries.Awg => Enumerable.Range(0, ThinnestAwg - ThickestAwg + 1).Select(n => WireSize.Awg(ThinnestAwg - n)),
        WireSizeSeries.SquareMillimeters => MetricAreas.Select(WireSize.SquareMillimeters),
        _ => [],
    };
}
