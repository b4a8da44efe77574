using System;

namespace CamPower;

/// <summary>A physical constant, a table value or a limit together with its source.</summary>
/// <remarks>Immutable. Every one that the package uses is a static property of the constants of the room that uses it,
/// and the page of sources is made from them.</remarks>
internal sealed class CitedValue
{
    /// <summary>Creates a cited value.</summary>
    /// <param name="name">What it is. Not empty.</param>
    /// <param name="value">The number in <paramref name="unit"/>, finite.</param>
    /// <param name="unit">The unit as printed; "1" for a plain ratio.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is NaN or infinite.</exception>
    internal CitedValue(string name, double value, string unit, Citation source)
    {
        Name = Require.Name(name, nameof(name));
        Unit = Require.Name(unit, nameof(unit));
        Value = Require.Finite(value, nameof(value), unit);
        Source = Require.NotNull(source, nameof(source));
    }

    /// <summary>Name of the value.</summary>
    internal string Name { get; }

    /// <summary>The number, in <see cref="Unit"/>.</summary>
    internal double Value { get; }

    /// <summary>The unit as printed; "1" for a plain ratio.</summary>
    internal string Unit { get; }

    /// <summary>Where it comes from.</summary>
    internal Citation Source { get; }

    /// <summary>Name, value and unit in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Name}: {Value} {Unit}");
}
