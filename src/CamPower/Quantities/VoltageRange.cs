using System;
using UnitsNet;

namespace CamPower;

/// <summary>A range of voltage: what a device accepts, or how far a supply can be trimmed.</summary>
/// <remarks>Immutable. Both ends are above 0, the upper one above the lower. RMS where the voltage is AC.</remarks>
/// <example>
/// <code>
/// var accepted = new VoltageRange(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2));
/// </code>
/// </example>
public sealed class VoltageRange
{
    /// <summary>States the range.</summary>
    /// <param name="lowest">The lowest voltage, above 0. [V]</param>
    /// <param name="highest">The highest voltage, above <paramref name="lowest"/>. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is outside its range.</exception>
    public VoltageRange(ElectricPotential lowest, ElectricPotential highest)
    {
        LowestVolts = Require.Positive(lowest.Volts, nameof(lowest), "V");
        HighestVolts = Require.Positive(highest.Volts, nameof(highest), "V");
        if (HighestVolts <= LowestVolts)
        {
            throw Require.OutOfRange(
                HighestVolts, nameof(highest), "V", FormattableString.Invariant($"above the lowest voltage of {LowestVolts}"));
        }

        Lowest = lowest;
        Highest = highest;
    }

    /// <summary>The lowest voltage.</summary>
    public ElectricPotential Lowest { get; }

    /// <summary>The highest voltage.</summary>
    public ElectricPotential Highest { get; }

    internal double LowestVolts { get; }

    internal double HighestVolts { get; }

    /// <summary>Both ends in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{LowestVolts:G6} V to {HighestVolts:G6} V");

    internal bool Contains(double volts) => volts >= LowestVolts && volts <= HighestVolts;
}
