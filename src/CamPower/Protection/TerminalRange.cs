using System;

namespace CamPower;

/// <summary>The sizes of wire that a terminal takes.</summary>
/// <remarks>Immutable. Sizes are compared by their cross-section, whatever series they are named in.</remarks>
/// <example>
/// <code>
/// var terminals = new TerminalRange(WireSize.Awg(24), WireSize.Awg(14));
/// bool fits = terminals.Accepts(WireSize.SquareMillimeters(1.5));   // true
/// </code>
/// </example>
public sealed class TerminalRange
{
    /// <summary>States the range.</summary>
    /// <param name="smallest">The smallest wire that it holds.</param>
    /// <param name="largest">The largest wire that fits, not smaller than <paramref name="smallest"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="largest"/> is smaller than <paramref name="smallest"/>.</exception>
    public TerminalRange(WireSize smallest, WireSize largest)
    {
        if (largest.SquareMeters < smallest.SquareMeters)
        {
            throw Require.OutOfRange(largest.Area.SquareMillimeters, nameof(largest), "mm²",
                FormattableString.Invariant($"at least {smallest.Area.SquareMillimeters}"));
        }

        Smallest = smallest;
        Largest = largest;
    }

    /// <summary>The smallest wire that it holds.</summary>
    public WireSize Smallest { get; }

    /// <summary>The largest wire that fits.</summary>
    public WireSize Largest { get; }

    /// <summary>Whether it takes a wire of a size.</summary>
    /// <param name="size">The size.</param>
    public bool Accepts(WireSize size) => size.SquareMeters >= Smallest.SquareMeters && size.SquareMeters <= Largest.SquareMeters;

    /// <summary>Both sizes in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Smallest} to {Largest}";
}
