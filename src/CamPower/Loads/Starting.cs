using System;
using UnitsNet;

namespace CamPower;

/// <summary>When an input turns on and when it drops out.</summary>
/// <remarks>Immutable. Both voltages are above 0; the drop-out is not above the turn-on.</remarks>
/// <example>
/// <code>
/// var starting = new Starting(turnOn: ElectricPotential.FromVolts(9.5), dropOut: ElectricPotential.FromVolts(8), SoftStart.No);
/// </code>
/// </example>
public sealed class Starting
{
    /// <summary>States the behaviour.</summary>
    /// <param name="turnOn">Rising terminal voltage at which it starts, above 0. [V]</param>
    /// <param name="dropOut">Falling terminal voltage at which it stops, above 0 and not above <paramref name="turnOn"/>. [V]</param>
    /// <param name="softStart">Whether the draw ramps up.</param>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is outside its range, or <paramref name="softStart"/> is none of those there are.</exception>
    public Starting(ElectricPotential turnOn, ElectricPotential dropOut, SoftStart softStart)
    {
        TurnOnVolts = Require.Positive(turnOn.Volts, nameof(turnOn), "V");
        DropOutVolts = Require.Positive(dropOut.Volts, nameof(dropOut), "V");
        if (DropOutVolts > TurnOnVolts)
        {
            throw Require.OutOfRange(DropOutVolts, nameof(dropOut), "V", FormattableString.Invariant($"not above the turn-on voltage of {TurnOnVolts}"));
        }

        TurnOn = turnOn;
        DropOut = dropOut;
        SoftStart = Require.Known(softStart, nameof(softStart));
    }

    /// <summary>Rising terminal voltage at which it starts.</summary>
    public ElectricPotential TurnOn { get; }

    /// <summary>Falling terminal voltage at which it stops.</summary>
    public ElectricPotential DropOut { get; }

    /// <summary>Whether the draw ramps up.</summary>
    public SoftStart SoftStart { get; }

    internal double TurnOnVolts { get; }

    internal double DropOutVolts { get; }

    /// <summary>Both voltages in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"turns on at {TurnOnVolts:G6} V, drops out at {DropOutVolts:G6} V");
}
