using System;
using System.Collections.Generic;
using CamPower.Faults;
using UnitsNet;

namespace CamPower;

/// <summary>State of a supply while a short at one of its outputs lasts, and the devices at its other outputs that go dark.</summary>
/// <remarks>Immutable. For the condition in which the most devices go dark, with the conductors to the short of that condition and the
/// supply at the low end of its tolerance. If a device drops out while the voltage falls and could restart, the result is for the moment
/// when it drops out. It lasts until the short is interrupted; what the inputs of the devices hold for milliseconds is not
/// counted.</remarks>
public sealed class SupplyDuringFault
{
    private readonly Func<double> _volts;

    internal SupplyDuringFault(
        SupplyState state, Func<double> volts, Condition condition, IReadOnlyList<SiteDevice> dark, IReadOnlyList<SiteDevice> belowWindow)
    {
        State = state;
        _volts = volts;
        Condition = condition;
        Dark = dark;
        BelowWindow = belowWindow;
    }

    /// <summary>What the voltage does.</summary>
    public SupplyState State { get; }

    /// <summary>The voltage at the terminals of the other outputs; 0 where the supply pulses or is off, null where it is not known.
    /// [V]</summary>
    public ElectricPotential? Voltage => State == SupplyState.Unknown ? null : ElectricPotential.FromVolts(_volts());

    /// <summary>Condition in which the most devices go dark; if several are equal, the one with the largest current.</summary>
    public Condition Condition { get; }

    /// <summary>The devices at other outputs of the supply that were up and drop out.</summary>
    public IReadOnlyList<SiteDevice> Dark { get; }

    /// <summary>Those that get less than they accept, and declare no drop-out voltage: whether they go dark is not known.</summary>
    public IReadOnlyList<SiteDevice> BelowWindow { get; }

    internal int Suffering => Dark.Count + BelowWindow.Count;

    /// <summary>The state in words, in the invariant culture; never throws.</summary>
    public override string ToString() => State switch
    {
        SupplyState.StaysUp => FormattableString.Invariant($"stays up at {_volts():0.00} V"),
        SupplyState.Dips => FormattableString.Invariant($"dips to {_volts():0.00} V"),
        SupplyState.Pulses => "pulses",
        SupplyState.Off => "is off",
        _ => "is not known",
    };
}
