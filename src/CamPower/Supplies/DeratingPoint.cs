using System;
using UnitsNet;

namespace CamPower;

/// <summary>One point of a derating curve: an ambient temperature and the share of the rating that is left there.</summary>
/// <remarks>Immutable.</remarks>
public sealed class DeratingPoint
{
    /// <summary>States a point.</summary>
    /// <param name="ambient">Temperature of the air around the supply, from absolute zero to 1000 °C.</param>
    /// <param name="share">Share of the rated current, from 0 to 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public DeratingPoint(Temperature ambient, Ratio share)
    {
        AmbientCelsius = Require.Within(Celsius.Of(ambient), Surroundings.AbsoluteZero, Surroundings.Hottest, nameof(ambient), "°C");
        ShareOfRating = Require.Within(share.DecimalFractions, 0, 1, nameof(share), "");
        Ambient = ambient;
        Share = share;
    }

    /// <summary>Temperature of the air around the supply.</summary>
    public Temperature Ambient { get; }

    /// <summary>Share of the rated current that is left.</summary>
    public Ratio Share { get; }

    internal double AmbientCelsius { get; }

    internal double ShareOfRating { get; }

    /// <summary>The point in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{ShareOfRating * 100:G6} % at {AmbientCelsius:G6} °C");
}
