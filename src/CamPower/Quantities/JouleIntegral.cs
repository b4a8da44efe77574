using System;

namespace CamPower;

/// <summary>The time integral of the squared current, I²t, a quantity that UnitsNet lacks. [A²·s]</summary>
/// <remarks>
/// What a current pulse does to one ohm: the trade states with it when a fuse melts, what it lets through and what a
/// conductor withstands. At least 0 and finite. The default value is 0 A²·s.
/// </remarks>
/// <example><code>JouleIntegral melting = JouleIntegral.FromAmpereSquaredSeconds(4.5);</code></example>
public readonly struct JouleIntegral : IEquatable<JouleIntegral>, IComparable<JouleIntegral>
{
    private JouleIntegral(double ampereSquaredSeconds) => AmpereSquaredSeconds = ampereSquaredSeconds;

    /// <summary>The value in ampere squared seconds. [A²·s]</summary>
    public double AmpereSquaredSeconds { get; }

    /// <summary>Creates a value from ampere squared seconds, at least 0. [A²·s]</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is negative, NaN or infinite.</exception>
    public static JouleIntegral FromAmpereSquaredSeconds(double value) =>
        new(Require.NotNegative(value, nameof(value), "A²·s"));

    /// <inheritdoc/>
    public int CompareTo(JouleIntegral other) => AmpereSquaredSeconds.CompareTo(other.AmpereSquaredSeconds);

    /// <inheritdoc/>
    public bool Equals(JouleIntegral other) => AmpereSquaredSeconds.Equals(other.AmpereSquaredSeconds);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is JouleIntegral other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => AmpereSquaredSeconds.GetHashCode();

    /// <summary>One line in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{AmpereSquaredSeconds:G6} A²·s");

    /// <summary>Whether both are the same.</summary>
    public static bool operator ==(JouleIntegral left, JouleIntegral right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    public static bool operator !=(JouleIntegral left, JouleIntegral right) => !left.Equals(right);

    /// <summary>Whether the left is the smaller.</summary>
    public static bool operator <(JouleIntegral left, JouleIntegral right) => left.AmpereSquaredSeconds < right.AmpereSquaredSeconds;

    /// <summary>Whether the left is the larger.</summary>
    public static bool operator >(JouleIntegral left, JouleIntegral right) => left.AmpereSquaredSeconds > right.AmpereSquaredSeconds;

    /// <summary>Whether the left is the smaller or both are the same.</summary>
    public static bool operator <=(JouleIntegral left, JouleIntegral right) => left.AmpereSquaredSeconds <= right.AmpereSquaredSeconds;

    /// <summary>Whether the left is the larger or both are the same.</summary>
    public static bool operator >=(JouleIntegral left, JouleIntegral right) => left.AmpereSquaredSeconds >= right.AmpereSquaredSeconds;
}
