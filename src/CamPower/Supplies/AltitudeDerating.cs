using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>Derating of a supply by altitude: thin air counts as warmer air.</summary>
/// <remarks>
/// Immutable. Above a height the ambient temperature counts as so many kelvins higher for every 1000 m more. A cool supply at high altitude
/// therefore keeps its rating. A supply below its minimum temperature stays below it.
/// </remarks>
/// <example>
/// <code>
/// TemperatureDelta at3000Meters = AltitudeDerating.Generic.RiseAt(Length.FromMeters(3000));   // 5 K
/// </code>
/// </example>
public sealed class AltitudeDerating
{
    private const double LowestMeters = -500, HighestMeters = 9000, MostKelvins = 100;

    private readonly double _aboveMeters, _kelvinsPerMeter;

    /// <summary>States the derating as a data sheet does.</summary>
    /// <param name="above">The height up to which nothing changes, from -500 m to 9000 m. [m]</param>
    /// <param name="perThousandMeters">By how much warmer the air counts for every 1000 m above that, from 0 K to 100 K. [K]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public AltitudeDerating(Length above, TemperatureDelta perThousandMeters)
    {
        _aboveMeters = MetersOf(above, nameof(above));
        _kelvinsPerMeter = Require.Within(perThousandMeters.Kelvins, 0, MostKelvins, nameof(perThousandMeters), "K") / 1000;
        Above = above;
        PerThousandMeters = perThousandMeters;
    }

    /// <summary>5 K for every 1000 m above 2000 m.</summary>
    /// <remarks>Common practice, no source: if the data sheet says something else, use the data sheet.</remarks>
    public static AltitudeDerating Generic { get; } = new(
        Length.FromMeters(SupplyConstants.GenericAltitudeFrom.Value),
            TemperatureDelta.FromKelvins(SupplyConstants.GenericAltitudeRise.Value));

    /// <summary>The height up to which nothing changes. [m]</summary>
    public Length Above { get; }

    /// <summary>By how much warmer the air counts for every 1000 m above that. [K]</summary>
    public TemperatureDelta PerThousandMeters { get; }

    /// <summary>By how much warmer the air counts at an altitude. [K]</summary>
    /// <param name="altitude">Height above the sea, from -500 m to 9000 m. [m]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="altitude"/> is outside its range.</exception>
    public TemperatureDelta RiseAt(Length altitude) => TemperatureDelta.FromKelvins(KelvinsAt(MetersOf(altitude, nameof(altitude))));

    /// <summary>Height and rise in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{_kelvinsPerMeter * 1000:G6} K for every 1000 m above {_aboveMeters:G6} m");

    /// <summary>A height above the sea that people live at. [m]</summary>
    internal static double MetersOf(Length altitude, string parameter) =>
        Require.Within(altitude.Meters, LowestMeters, HighestMeters, parameter, "m");

    internal double KelvinsAt(double meters) => Math.Max(0, meters - _aboveMeters) * _kelvinsPerMeter;
}
