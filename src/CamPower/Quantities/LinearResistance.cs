using System;
using UnitsNet;

namespace CamPower;

/// <summary>Resistance per length of a conductor or of a loop, a quantity that UnitsNet lacks. [Ω/m]</summary>
/// <remarks>
/// At least 0 and finite. The default value is 0 Ω/m. Whether it is of one conductor or of the loop, out
/// and back, is said by the member that returns it.
/// </remarks>
/// <example>
/// <code>
/// LinearResistance perLength = LinearResistance.FromOhmsPer1000Feet(6.385);
/// ElectricResistance r = perLength.Over(Length.FromFeet(120));   // 0.7662 Ω
/// </code>
/// </example>
public readonly struct LinearResistance : IEquatable<LinearResistance>, IComparable<LinearResistance>
{
    private const double MetersPerFoot = 0.3048;

    private LinearResistance(double ohmsPerMeter) => OhmsPerMeter = ohmsPerMeter;

    /// <summary>The value in ohms per meter. [Ω/m]</summary>
    public double OhmsPerMeter { get; }

    /// <summary>The value in ohms per kilometer. [Ω/km]</summary>
    public double OhmsPerKilometer => OhmsPerMeter * 1000;

    /// <summary>The value in ohms per 100 meters. [Ω/100 m]</summary>
    public double OhmsPer100Meters => OhmsPerMeter * 100;

    /// <summary>The value in ohms per 1000 feet; a foot is 0.3048 m exactly. [Ω/1000 ft]</summary>
    public double OhmsPer1000Feet => OhmsPerMeter * 1000 * MetersPerFoot;

    /// <summary>The value in ohms per 100 feet. [Ω/100 ft]</summary>
    public double OhmsPer100Feet => OhmsPerMeter * 100 * MetersPerFoot;

    /// <summary>Creates a value from ohms per meter, at least 0. [Ω/m]</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is negative, NaN or infinite.</exception>
    public static LinearResistance FromOhmsPerMeter(double value) =>
        new(Require.NotNegative(value, nameof(value), "Ω/m"));

    /// <summary>Creates a value from ohms per kilometer, at least 0. [Ω/km]</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is negative, NaN or infinite.</exception>
    public static LinearResistance FromOhmsPerKilometer(double value) =>
        new(Require.NotNegative(value, nameof(value), "Ω/km") / 1000);

    /// <summary>Creates a value from ohms per 100 meters, at least 0. [Ω/100 m]</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is negative, NaN or infinite.</exception>
    public static LinearResistance FromOhmsPer100Meters(double value) =>
        new(Require.NotNegative(value, nameof(value), "Ω/100 m") / 100);

    /// <summary>Creates a value from ohms per 1000 feet, at least 0. [Ω/1000 ft]</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is negative, NaN or infinite.</exception>
    public static LinearResistance FromOhmsPer1000Feet(double value) =>
        new(Require.NotNegative(value, nameof(value), "Ω/1000 ft") / (1000 * MetersPerFoot));

    /// <summary>Creates a value from ohms per 100 feet, at least 0. [Ω/100 ft]</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is negative, NaN or infinite.</exception>
    public static LinearResistance FromOhmsPer100Feet(double value) =>
        new(Require.NotNegative(value, nameof(value), "Ω/100 ft") / (100 * MetersPerFoot));

    /// <summary>The resistance of a length. [Ω]</summary>
    /// <param name="length">The length that the current travels, at least 0. [any length unit]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> is negative or infinite.</exception>
    public ElectricResistance Over(Length length) =>
        ElectricResistance.FromOhms(OhmsPerMeter * Require.NotNegative(length.Meters, nameof(length), "m"));

    /// <inheritdoc/>
    public int CompareTo(LinearResistance other) => OhmsPerMeter.CompareTo(other.OhmsPerMeter);

    /// <inheritdoc/>
    public bool Equals(LinearResistance other) => OhmsPerMeter.Equals(other.OhmsPerMeter);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is LinearResistance other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => OhmsPerMeter.GetHashCode();

    /// <summary>One line in the invariant culture, in ohms per kilometer; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{OhmsPerKilometer:G6} Ω/km");

    /// <summary>Whether both are the same resistance per length.</summary>
    public static bool operator ==(LinearResistance left, LinearResistance right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    public static bool operator !=(LinearResistance left, LinearResistance right) => !left.Equals(right);

    /// <summary>Whether the left is the smaller.</summary>
    public static bool operator <(LinearResistance left, LinearResistance right) => left.OhmsPerMeter < right.OhmsPerMeter;

    /// <summary>Whether the left is the larger.</summary>
    public static bool operator >(LinearResistance left, LinearResistance right) => left.OhmsPerMeter > right.OhmsPerMeter;

    /// <summary>Whether the left is the smaller or both are the same.</summary>
    public static bool operator <=(LinearResistance left, LinearResistance right) => left.OhmsPerMeter <= right.OhmsPerMeter;

    /// <summary>Whether the left is the larger or both are the same.</summary>
    public static bool operator >=(LinearResistance left, LinearResistance right) => left.OhmsPerMeter >= right.OhmsPerMeter;
}
