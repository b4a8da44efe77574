using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>The circuit breaker of a mains circuit: its rated current and the band in which it trips at once.</summary>
/// <remarks>
/// Immutable. The band is stated in multiples of the rated current, of sinusoidal RMS: below the lower edge the breaker does not trip at
/// once, above the upper edge it does. Choosing, fitting and testing it is for a licensed electrician and the local code.
/// </remarks>
/// <example>
/// <code>
/// CircuitBreaker breaker = CircuitBreaker.TypeB("kitchen breaker", ElectricCurrent.FromAmperes(16));   // at once from 48 A to 80 A
/// var receptacle = new Receptacle("kitchen", ElectricPotential.FromVolts(230), ElectricCurrent.FromAmperes(16), breaker: breaker);
/// </code>
/// </example>
public sealed class CircuitBreaker
{
    // No breaker trips at once below its rating, and none is set above 100 times it.
    private const double LeastMultiple = 1, MostMultiple = 100;

    /// <summary>Describes a breaker by the band on its data sheet.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="rating">Rated current, above 0. [A]</param>
    /// <param name="instantaneousFrom">Lower edge of the band over the rated current, from 1 to 100. [1]</param>
    /// <param name="instantaneousTo">Upper edge of the band over the rated current, from <paramref name="instantaneousFrom"/> to 100.
    /// [1]</param>
    /// <param name="residualCurrent">Rated residual operating current of the circuit, where it has a residual-current device, above 0; null
    /// where it has none or it is not stated. [A]</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public CircuitBreaker(string name, ElectricCurrent rating, double instantaneousFrom, double instantaneousTo,
        ElectricCurrent? residualCurrent = null)
    {
        Name = Require.Name(name, nameof(name));
        RatedAmperes = Require.Positive(rating.Amperes, nameof(rating), "A");
        InstantaneousFrom = Require.Within(instantaneousFrom, LeastMultiple, MostMultiple, nameof(instantaneousFrom), string.Empty);
        InstantaneousTo = Require.Within(instantaneousTo, instantaneousFrom, MostMultiple, nameof(instantaneousTo), string.Empty);
        if (residualCurrent is ElectricCurrent residual) Require.Positive(residual.Amperes, nameof(residualCurrent), "A");
        Rating = rating;
        ResidualCurrent = residualCurrent;
    }

    /// <summary>Name on the site.</summary>
    public string Name { get; }

    /// <summary>Rated current. [A]</summary>
    public ElectricCurrent Rating { get; }

    /// <summary>Lower edge of its instantaneous band over the rated current. [1]</summary>
    public double InstantaneousFrom { get; }

    /// <summary>Upper edge of its instantaneous band over the rated current. [1]</summary>
    public double InstantaneousTo { get; }

    /// <summary>Rated residual operating current of the circuit; null where it has no residual-current device, or it is not stated.
    /// [A]</summary>
    public ElectricCurrent? ResidualCurrent { get; }

    internal double RatedAmperes { get; }

    /// <summary>The RMS current up to which it does not trip at once. [A]</summary>
    internal double HoldsAmperes => RatedAmperes * InstantaneousFrom;

    /// <summary>The RMS current above which it trips at once. [A]</summary>
    internal double TripsAmperes => RatedAmperes * InstantaneousTo;

    /// <summary>A breaker of type B: it trips at once from 3 to 5 times its rated current.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="rating">Rated current, above 0. [A]</param>
    /// <param name="residualCurrent">Rated residual operating current of the circuit, above 0; null where it has no residual-current
    /// device. [A]</param>
    /// <remarks>Source: <see cref="Sources.BreakerBands"/>.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static CircuitBreaker TypeB(string name, ElectricCurrent rating, ElectricCurrent? residualCurrent = null) =>
        new(name, rating, SupplyConstants.TypeBFrom.Value, SupplyConstants.TypeCFrom.Value, residualCurrent);

    /// <summary>A breaker of type C: it trips at once from 5 to 10 times its rated current.</summary>
    /// <inheritdoc cref="TypeB"/>
    public static CircuitBreaker TypeC(string name, ElectricCurrent rating, ElectricCurrent? residualCurrent = null) =>
        new(name, rating, SupplyConstants.TypeCFrom.Value, SupplyConstants.TypeDFrom.Value, residualCurrent);

    /// <summary>A breaker of type D: it trips at once from 10 to 20 times its rated current.</summary>
    /// <inheritdoc cref="TypeB"/>
    public static CircuitBreaker TypeD(string name, ElectricCurrent rating, ElectricCurrent? residualCurrent = null) =>
        new(name, rating, SupplyConstants.TypeDFrom.Value, SupplyConstants.TypeDTo.Value, residualCurrent);

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
