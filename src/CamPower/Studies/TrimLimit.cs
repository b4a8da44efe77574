using System;
using UnitsNet;

namespace CamPower;

/// <summary>One end of a <see cref="TrimWindow"/>: a set point, and what goes wrong beyond it.</summary>
/// <remarks>Immutable.</remarks>
public sealed class TrimLimit
{
    internal TrimLimit(double volts, TrimBound bound, SiteDevice? device = null, Condition? condition = null)
    {
        Volts = volts;
        Bound = bound;
        Device = device;
        Condition = condition;
    }

    /// <summary>The set point at which all is still well. [V]</summary>
    public ElectricPotential SetPoint => ElectricPotential.FromVolts(Volts);

    /// <summary>Reason for the limit.</summary>
    public TrimBound Bound { get; }

    /// <summary>The device that is out just beyond it; where nothing balances any more, the one behind the most resistance; null where the
    /// supply ends the window.</summary>
    public SiteDevice? Device { get; }

    /// <summary>The condition in which it is out; null at light load and without load, which are no conditions of the site's, and where the
    /// supply ends the window.</summary>
    public Condition? Condition { get; }

    internal double Volts { get; }

    /// <summary>Who sets the limit, where and why, without the voltage.</summary>
    internal string Cause => Device is null ? Reason : $"{Device}, {Reason}";

    /// <summary>Who asks for the limit.</summary>
    /// <param name="asks">What a device does: "needs" or "allows".</param>
    /// <param name="bound">"at least" or "at most".</param>
    internal string Asked(string asks, string bound) => Device is null
        ? FormattableString.Invariant($"the supply gives {bound} {Volts:0.00#} V")
        : FormattableString.Invariant($"{Device} {asks} {bound} {Volts:0.00#} V ({Reason})");

    private string Reason => Bound switch
    {
        TrimBound.LowestVoltage => $"{Condition}: lowest voltage",
        TrimBound.DropOut => $"{Condition}: drop-out",
        TrimBound.Starting => $"{Condition}: starting",
        TrimBound.Collapse => $"{Condition}: no operating point",
        TrimBound.SupplyOverloaded => $"{Condition}: supply overloaded",
        TrimBound.HighestVoltage => "light load: highest voltage",
        TrimBound.NoLoadVoltage => "before it draws: highest voltage",
        _ => "range of the supply",
    };

    /// <summary>The set point and what sets it, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Volts:0.00#} V ({Cause})");
}
