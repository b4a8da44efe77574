using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>A share against what it depends on: straight lines between points.</summary>
/// <typeparam name="TQuantity">
/// What the share depends on: the temperature of the air or the voltage at the input for what is left of a rated current, the
/// load, as a share of the rating, for an efficiency or a power factor.
/// </typeparam>
/// <remarks>Immutable. Outside its first and its last point it says nothing.</remarks>
/// <example>
/// <code>
/// var efficiency = new ShareCurve&lt;Ratio>(
///     new(Ratio.FromPercent(20), Ratio.FromPercent(80)), new(Ratio.FromPercent(100), Ratio.FromPercent(88)));
/// Ratio? half = efficiency.ShareAt(Ratio.FromPercent(60));   // 84 %
/// </code>
/// </example>
public sealed class ShareCurve<TQuantity>
    where TQuantity : struct, IQuantity
{
    private readonly PiecewiseLinear _lines;

    /// <summary>States a curve.</summary>
    /// <param name="points">At least two, each beyond the one before it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="points"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two points, or they do not rise.</exception>
    public ShareCurve(params SharePoint<TQuantity>[] points)
    {
        Points = Require.Items(points, nameof(points));
        _lines = new PiecewiseLinear(Points.Select(p => p.Number), Points.Select(p => p.ShareOfWhole), nameof(points));
    }

    private ShareCurve(ShareCurve<TQuantity> curve, Citation source, double band)
    {
        Points = curve.Points;
        _lines = curve._lines;
        Source = source;
        Band = band;
    }

    /// <summary>Where the points come from, or null where that is not stated.</summary>
    public Citation? Source { get; }

    /// <summary>The points, each beyond the one before it.</summary>
    public IReadOnlyList<SharePoint<TQuantity>> Points { get; }

    /// <summary>The share between the points; null outside the curve. [1]</summary>
    /// <param name="at">Where, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="at"/> is not finite.</exception>
    public Ratio? ShareAt(TQuantity at) =>
        ShareAt(Require.Finite(SharePoint<TQuantity>.NumberOf(at), nameof(at), string.Empty)) is double share
            ? Ratio.FromDecimalFractions(share)
            : null;

    /// <summary>The same curve with a source.</summary>
    /// <param name="source">Where the points come from.</param>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public ShareCurve<TQuantity> WithSource(Citation source) => new(this, Require.NotNull(source, nameof(source)), Band);

    /// <summary>The points in words, in the invariant culture; never throws.</summary>
    public override string ToString() => string.Join(", ", Points);

    /// <summary>The share at a number as <see cref="SharePoint{TQuantity}.Number"/> holds it; null outside the curve.</summary>
    internal double? ShareAt(double number) => _lines.At(number);

    /// <summary>Uncertainty of a share, up or down: the margin of a verdict that uses it. [1]</summary>
    internal double Band { get; }

    /// <summary>Where the curve begins, as <see cref="SharePoint{TQuantity}.Number"/>.</summary>
    internal double Lowest => _lines.Lowest;

    /// <summary>Where the curve ends, as <see cref="SharePoint{TQuantity}.Number"/>.</summary>
    internal double Highest => _lines.Highest;

    /// <summary>The same curve with a source and the band that its shares lie in.</summary>
    internal ShareCurve<TQuantity> WithSource(Citation source, double band) => new(this, source, band);

    /// <summary>The curve itself, if none of its shares is 0.</summary>
    internal ShareCurve<TQuantity> AboveZero(string parameter)
    {
        foreach (SharePoint<TQuantity> point in Points) Require.Positive(point.ShareOfWhole, parameter, string.Empty);
        return this;
    }

    /// <summary>The curve itself, if all its points lie in a range and their shares between the least and 1.</summary>
    internal ShareCurve<TQuantity> Checked(double from, double to, double leastShare, string parameter, string unit)
    {
        foreach (SharePoint<TQuantity> point in Points)
        {
            Require.Within(point.Number, from, to, parameter, unit);
            Require.Within(point.ShareOfWhole, leastShare, 1, parameter, string.Empty);
        }

        return this;
    }
}
