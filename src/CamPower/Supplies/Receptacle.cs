using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>A receptacle that boxes are plugged into.</summary>
/// <remarks>
/// Immutable. What else is plugged into it, or shares its circuit, is not known here. The circuit behind it, its protection
/// and its earthing are for a licensed electrician and the local code.
/// </remarks>
/// <example>
/// <code>
/// var receptacle = new Receptacle("office receptacle", ElectricPotential.FromVolts(120), ElectricCurrent.FromAmperes(15));
/// ElectricCurrent most = receptacle.MaximumCurrent;    // 12 A
/// DistributionBox plugged = box.WithReceptacle(receptacle);
/// </code>
/// </example>
public sealed class Receptacle
{
    /// <summary>Describes a receptacle.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="voltage">The nominal voltage of the line, RMS, above 0 and at most 1000 V; a condition may state another. [V]</param>
    /// <param name="rating">The current that it is rated for, above 0. [A]</param>
    /// <param name="share">The share of its rating that may be plugged in continuously, above 0 and at most 1; null for
    /// 0.8 (<see cref="Sources.NecReceptacle"/>). The local code may allow all of it. [1]</param>
    /// <param name="breaker">The breaker of its circuit, which it may share with other receptacles; null where it is not stated.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Receptacle(string name, ElectricPotential voltage, ElectricCurrent rating, Ratio? share = null,
        CircuitBreaker? breaker = null)
    {
        Name = Require.Name(name, nameof(name));
        Volts = Require.Positive(Require.Within(voltage.Volts, 0, 1000, nameof(voltage), "V"), nameof(voltage), "V");
        Require.Positive(rating.Amperes, nameof(rating), "A");
        Share = share ?? Ratio.FromPercent(SupplyConstants.ReceptacleShare.Value);
        Require.Positive(Require.Within(Share.DecimalFractions, 0, 1, nameof(share), string.Empty), nameof(share), string.Empty);
        Voltage = voltage;
        Rating = rating;
        Breaker = breaker;
        MostAmperes = rating.Amperes * Share.DecimalFractions;
    }

    /// <summary>Name on the site.</summary>
    public string Name { get; }

    /// <summary>The nominal voltage of the line, RMS. [V]</summary>
    public ElectricPotential Voltage { get; }

    /// <summary>The current that it is rated for. [A]</summary>
    public ElectricCurrent Rating { get; }

    /// <summary>The share of its rating that may be plugged in continuously. [1]</summary>
    public Ratio Share { get; }

    /// <summary>The breaker of its circuit, which it may share with other receptacles; null where it is not stated.</summary>
    public CircuitBreaker? Breaker { get; }

    /// <summary>The most current that may be plugged in: the share of the rating. [A]</summary>
    /// <remarks>Source: <see cref="Sources.NecReceptacle"/>, unless the share is your own.</remarks>
    public ElectricCurrent MaximumCurrent => ElectricCurrent.FromAmperes(MostAmperes);

    internal double Volts { get; }

    internal double MostAmperes { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
