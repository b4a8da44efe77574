using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>How the rated current of a protective device changes with the air around it: straight lines between points.</summary>
/// <remarks>
/// Immutable. Outside its first and last point nothing is known, and a temperature there is refused. The same factor
/// multiplies every current of the device.
/// </remarks>
/// <example>
/// <code>
/// Ratio share = AmbientCurve.GenericResettable.FactorAt(Temperature.FromDegreesCelsius(55));   // 65 %
/// </code>
/// </example>
public sealed class AmbientCurve
{
    private readonly PiecewiseLinear _lines;

    /// <summary>States a curve.</summary>
    /// <param name="source">Where the points come from.</param>
    /// <param name="points">At least two, in rising ambient.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two points, or they do not rise in ambient.</exception>
    public AmbientCurve(Citation source, params AmbientPoint[] points)
    {
        Source = Require.NotNull(source, nameof(source));
        Points = Require.Items(points, nameof(points));
        _lines = new PiecewiseLinear(Points.Select(p => p.AmbientCelsius), Points.Select(p => p.FactorValue), nameof(points));
    }

    private AmbientCurve(double band, Citation source, params AmbientPoint[] points)
        : this(source, points) => Band = band;

    /// <summary>A generic polymeric resettable fuse, from -40 °C to 85 °C: about 1 % less for every kelvin.</summary>
    /// <remarks>Common practice, written down from memory; families differ by 0.05. The data sheet at hand goes before it.</remarks>
    public static AmbientCurve GenericResettable { get; } = new(band: 0.05, Sources.GenericResettableCurve,
        Point(-40, 1.56), Point(-20, 1.37), Point(0, 1.18), Point(20, 1), Point(30, 0.90), Point(40, 0.80), Point(50, 0.70),
        Point(60, 0.60), Point(70, 0.50), Point(85, 0.35));

    /// <summary>Where the points come from.</summary>
    public Citation Source { get; }

    /// <summary>The points, in rising ambient.</summary>
    public IReadOnlyList<AmbientPoint> Points { get; }

    /// <summary>Factor on every rated current at an ambient temperature. [1]</summary>
    /// <param name="ambient">Temperature of the air around the device, between the first and the last point.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ambient"/> is outside the curve.</exception>
    public Ratio FactorAt(Temperature ambient) => Ratio.FromDecimalFractions(FactorAtCelsius(Celsius.Of(ambient), nameof(ambient)));

    /// <summary>The points in words, in the invariant culture; never throws.</summary>
    public override string ToString() => string.Join(", ", Points);

    /// <summary>How far the factor may be off, up or down: the margin of a verdict that rests on it. [1]</summary>
    internal double Band { get; }

    internal double HottestCelsius => _lines.Highest;

    /// <summary>The factor beyond the hot end as well, where it is at most that of the last point; null below the cold end, where nothing is known.</summary>
    internal double? MostFactorAt(double celsius) => _lines.At(Math.Min(celsius, _lines.Highest));

    internal bool Covers(double celsius) => celsius >= _lines.Lowest && celsius <= _lines.Highest;

    /// <summary>How far the air around a device is outside the curve; null where it is not.</summary>
    internal ValidityBreach? BreachAt(double celsius, ProtectiveDevice device) => Covers(celsius) ? null : new ValidityBreach(
        $"what {device} carries in its air", Source, Temperature.FromDegreesCelsius(celsius),
        Temperature.FromDegreesCelsius(celsius < _lines.Lowest ? _lines.Lowest : _lines.Highest));

    internal double FactorAtCelsius(double celsius, string parameter) =>
        _lines.At(celsius) ?? throw Require.OutOfRange(celsius, parameter, "°C", FormattableString.Invariant($"from {_lines.Lowest} °C to {_lines.Highest}"));

    private static AmbientPoint Point(double celsius, double factor) =>
        new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(factor));
}
