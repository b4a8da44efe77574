using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Linq;

namespace CamPower.Conductors;

/// <summary>The standard sizes of each series, and the way from one to the next.</summary>
/// <remarks>
/// American wire gauge: 44 to 4/0 (<see cref="Sources.AmericanWireGauge"/>). Square millimeters: IEC 60228, 0.5 to 1000
/// (<see cref="Sources.Iec60228"/>). Kcmil: 250 to 2000 (<see cref="Sources.KcmilSizes"/>). Diameters: 0.02 to 5 mm
/// (<see cref="Sources.WireDiameters"/>).
/// </remarks>
internal static class StandardSizes
{
    private const double SameArea = 1e-12;

    private static readonly ReadOnlyCollection<WireSize> None = Ordered([]);

    private static readonly ReadOnlyCollection<WireSize> Awg = Ordered(Enumerable.Range(-3, 48).Select(WireSize.Awg));

    private static readonly ReadOnlyCollection<WireSize> SquareMillimeters = Ordered(new[]
    {
        0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300, 400, 500, 630, 800, 1000,
    }.Select(WireSize.SquareMillimeters));

    private static readonly ReadOnlyCollection<WireSize> Kcmil = Ordered(new double[]
    {
        250, 300, 350, 400, 500, 600, 700, 750, 800, 900, 1000, 1250, 1500, 1750, 2000,
    }.Select(WireSize.Kcmil));

    private static readonly ReadOnlyCollection<WireSize> Diameters = Ordered(new[]
    {
        0.02, 0.0224, 0.025, 0.028, 0.0315, 0.0355, 0.04, 0.045, 0.05, 0.056, 0.063, 0.071, 0.08, 0.09,
        0.1, 0.112, 0.125, 0.14, 0.16, 0.18, 0.2, 0.224, 0.25, 0.28, 0.315, 0.355, 0.4, 0.45, 0.5, 0.56, 0.63, 0.71, 0.8, 0.9,
        1, 1.12, 1.25, 1.4, 1.6, 1.8, 2, 2.24, 2.5, 2.8, 3.15, 3.55, 4, 4.5, 5,
    }.Select(WireSize.Diameter));

    /// <inheritdoc cref="WireSize.Standard"/>
    internal static IReadOnlyList<WireSize> In(WireSizeSeries series) => series switch
    {
        WireSizeSeries.Awg => Awg,
        WireSizeSeries.SquareMillimeters => SquareMillimeters,
        WireSizeSeries.Kcmil => Kcmil,
        WireSizeSeries.Diameter => Diameters,
        _ => None,
    };

    /// <inheritdoc cref="WireSize.NextLarger"/>
    internal static WireSize? NextLarger(WireSize size) =>
        In(size.Series).Select(s => (WireSize?)s).FirstOrDefault(s => s > size);

    /// <inheritdoc cref="WireSize.NextSmaller"/>
    internal static WireSize? NextSmaller(WireSize size) =>
        In(size.Series).Select(s => (WireSize?)s).LastOrDefault(s => s < size);

    /// <inheritdoc cref="WireSize.NearestIn"/>
    internal static WireSize NearestTo(WireSize size, WireSizeSeries series)
    {
        double area = size.SquareMeters;
        IReadOnlyList<WireSize> sizes = In(series);
        if (sizes.Count == 0) throw new ArgumentOutOfRangeException(nameof(series), series, "The series has no sizes.");
        WireSize nearest = sizes[0];
        foreach (WireSize next in sizes.Skip(1))
        {
            // A tie that is missed by rounding alone is a tie; the larger size comes later.
            if (Distance(next) <= Distance(nearest) + (SameArea * area)) nearest = next;
        }

        return nearest;

        double Distance(WireSize candidate) => Math.Abs(candidate.SquareMeters - area);
    }

    private static ReadOnlyCollection<WireSize> Ordered(IEnumerable<WireSize> sizes) => Array.AsReadOnly([.. sizes.OrderBy(s => s)]);
}
