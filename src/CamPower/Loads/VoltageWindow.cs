using System;
using UnitsNet;

namespace CamPower;

/// <summary>The voltage that a device accepts at its terminals.</summary>
/// <remarks>Immutable. Both ends are above 0, the upper one above the lower. RMS where the voltage is AC.</remarks>
/// <example>
/// <code>
/// var window = new VoltageWindow(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2));
/// </code>
/// </example>
public sealed class VoltageWindow
{
    /// <summary>States the window.</summary>
    /// <param name="lowest">Lowest voltage accepted, above 0. [V]</param>
    /// <param name="highest">Highest voltage accepted, above <paramref name="lowest"/>. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is outside its range.</exception>
    public VoltageWindow(ElectricPotential lowest, ElectricPotential highest)
    {
        LowestVolts = Require.Positive(lowest.Volts, nameof(lowest), "V");
        HighestVolts = Require.Positive(highest.Volts, nameof(highest), "V");
        if (HighestVolts <= LowestVolts)
        {
            throw Require.OutOfRange(HighestVolts, nameof(highest), "V", FormattableString.Invariant($"above the lowest voltage of {LowestVolts}"));
        }

        Lowest = lowest;
        Highest = highest;
    }

    /// <summary>Lowest voltage accepted.</summary>
    public ElectricPotential Lowest { get; }

    /// <summary>Highest voltage accepted.</summary>
    public ElectricPotential Highest { get; }

    internal double LowestVolts { get; }

    internal double HighestVolts { get; }

    /// <summary>Both ends in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{LowestVolts:G6} V to {HighestVolts:G6} V");
}
