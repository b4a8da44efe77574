using System;
using UnitsNet;

namespace CamPower;

/// <summary>One point of a curve: a share, and the quantity at which it holds.</summary>
/// <typeparam name="TQuantity">What the share depends on.</typeparam>
/// <remarks>Immutable.</remarks>
public sealed class SharePoint<TQuantity>
    where TQuantity : struct, IQuantity
{
    private const double LargestShare = 5;

    /// <summary>States a point.</summary>
    /// <param name="at">Where the share holds, finite.</param>
    /// <param name="share">The share, from 0 to 5: above 1 where more than the rated current is left, in cold air. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public SharePoint(TQuantity at, Ratio share)
    {
        Number = Require.Finite(NumberOf(at), nameof(at), string.Empty);
        ShareOfWhole = Require.Within(share.DecimalFractions, 0, LargestShare, nameof(share), "");
        At = at;
        Share = share;
    }

    /// <summary>Where the share holds.</summary>
    public TQuantity At { get; }

    /// <summary>The share.</summary>
    public Ratio Share { get; }

    /// <summary>Where the share holds, as a number: [°C] for a temperature, the base unit for all else.</summary>
    internal double Number { get; }

    internal double ShareOfWhole { get; }

    /// <summary>The point in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{ShareOfWhole * 100:G6} % at {Where}");

    internal static double NumberOf(TQuantity at) =>
        at is Temperature temperature ? Celsius.Of(temperature) : (double)at.As(at.QuantityInfo.BaseUnitInfo.Value);

    private string Where => At switch
    {
        Temperature => FormattableString.Invariant($"{Number:G6} °C"),
        ElectricPotential => FormattableString.Invariant($"{Number:G6} V"),
        _ => FormattableString.Invariant($"{Number:G6}"),
    };
}
