using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>How much of its rating a supply keeps as the air around it warms: straight lines between points.</summary>
/// <remarks>Immutable. Outside its first and last point the supply is not rated to run: the share there is 0.</remarks>
/// <example>
/// <code>
/// Ratio share = DeratingCurve.GenericEnclosed.ShareAt(Temperature.FromDegreesCelsius(60));   // 75 %
/// </code>
/// </example>
public sealed class DeratingCurve
{
    /// <summary>States a curve.</summary>
    /// <param name="points">At least two, in rising ambient.</param>
    /// <exception cref="ArgumentNullException"><paramref name="points"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two points, or they do not rise in ambient.</exception>
    public DeratingCurve(params DeratingPoint[] points)
    {
        Points = Require.Items(points, nameof(points));
        if (Points.Count < 2) throw new ArgumentException("A derating curve needs at least two points.", nameof(points));
        if (Points.Zip(Points.Skip(1), (a, b) => b.AmbientCelsius > a.AmbientCelsius).Contains(false))
        {
            throw new ArgumentException("The points of a derating curve must rise in ambient temperature.", nameof(points));
        }
    }

    /// <summary>A generic enclosed switch-mode supply: full rating from -20 °C to 50 °C, then 2.5 % less per kelvin, to 70 °C.</summary>
    /// <remarks>Common practice, no source: the data sheet of the supply at hand goes before it.</remarks>
    public static DeratingCurve GenericEnclosed { get; } = new(
        Point(SupplyConstants.GenericFrom, 100),
        Point(SupplyConstants.GenericFullTo, 100),
        Point(SupplyConstants.GenericTo, SupplyConstants.GenericShareAtHighest.Value));

    /// <summary>The points, in rising ambient.</summary>
    public IReadOnlyList<DeratingPoint> Points { get; }

    /// <summary>Share of the rating at an ambient temperature; 0 outside the curve, where the supply is not rated to run. [1]</summary>
    /// <param name="ambient">Temperature of the air around the supply, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ambient"/> is infinite.</exception>
    public Ratio ShareAt(Temperature ambient) =>
        Ratio.FromDecimalFractions(ShareAtCelsius(Require.Finite(Celsius.Of(ambient), nameof(ambient), "°C")));

    /// <summary>The points in words, in the invariant culture; never throws.</summary>
    public override string ToString() => string.Join(", ", Points);

    internal double ShareAtCelsius(double celsius)
    {
        for (int i = 1; i < Points.Count; i++)
        {
            DeratingPoint low = Points[i - 1], high = Points[i];
            if (celsius < low.AmbientCelsius) return 0;
            if (celsius > high.AmbientCelsius) continue;
            double along = (celsius - low.AmbientCelsius) / (high.AmbientCelsius - low.AmbientCelsius);
            return low.ShareOfRating + (along * (high.ShareOfRating - low.ShareOfRating));
        }

        return 0;
    }

    private static DeratingPoint Point(CitedValue ambient, double percent) =>
        new(Temperature.FromDegreesCelsius(ambient.Value), Ratio.FromPercent(percent));
}
