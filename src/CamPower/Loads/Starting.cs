using System;
using UnitsNet;

namespace CamPower;

/// <summary>When an input turns on and when it drops out.</summary>
/// <remarks>Immutable. Both voltages are above 0; the drop-out is not above the turn-on.</remarks>
/// <example>
/// <code>
/// var starting = new Starting(turnOn: ElectricPotential.FromVolts(9.5), dropOut: ElectricPotential.FromVolts(8), softStart: false);
/// </code>
/// </example>
public sealed class Starting
{
    /// <summary>States the behavior.</summary>
    /// <param name="turnOn">Rising terminal voltage at which it starts, above 0. [V]</param>
    /// <param name="dropOut">Falling terminal voltage at which it stops, above 0 and not above <paramref name="turnOn"/>. [V]</param>
    /// <param name="softStart">Whether the input ramps its draw up, so that the voltage can follow it past the unstable one; null where it
    /// is not stated, which counts as no.</param>
    /// <param name="delay">How long it waits after power comes before it draws, at least 0; null where it is not stated. [s]</param>
    /// <param name="holdUp">How long it runs on without power, at least 0; null where it is not stated. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Starting(ElectricPotential turnOn, ElectricPotential dropOut, bool? softStart, Duration? delay = null, Duration? holdUp = null)
    {
        TurnOnVolts = Require.Positive(turnOn.Volts, nameof(turnOn), "V");
        DropOutVolts = Require.Positive(dropOut.Volts, nameof(dropOut), "V");
        if (DropOutVolts > TurnOnVolts)
        {
            throw Require.OutOfRange(
                DropOutVolts, nameof(dropOut), "V", FormattableString.Invariant($"at most the turn-on voltage, {TurnOnVolts}"));
        }

        TurnOn = turnOn;
        DropOut = dropOut;
        HasSoftStart = softStart;
        DelaySeconds = delay is Duration wait ? Require.NotNegative(wait.Seconds, nameof(delay), "s") : null;
        HoldUpSeconds = holdUp is Duration held ? Require.NotNegative(held.Seconds, nameof(holdUp), "s") : null;
        Delay = delay;
        HoldUp = holdUp;
    }

    /// <summary>Rising terminal voltage at which it starts.</summary>
    public ElectricPotential TurnOn { get; }

    /// <summary>Falling terminal voltage at which it stops.</summary>
    public ElectricPotential DropOut { get; }

    /// <summary>Whether the draw ramps up; null where it is not stated, which counts as no.</summary>
    public bool? HasSoftStart { get; }

    /// <summary>Time from when power comes until it draws current, or null where it is not stated. [s]</summary>
    public Duration? Delay { get; }

    /// <summary>How long it runs on without power, or null where it is not stated. [s]</summary>
    public Duration? HoldUp { get; }

    internal double TurnOnVolts { get; }

    internal double DropOutVolts { get; }

    internal double? DelaySeconds { get; }

    internal double? HoldUpSeconds { get; }

    /// <summary>Both voltages in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"turns on at {TurnOnVolts:G6} V, drops out at {DropOutVolts:G6} V");
}
