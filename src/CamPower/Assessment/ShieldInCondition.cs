using System;
using UnitsNet;

namespace CamPower;

/// <summary>What one video shield carries in one condition.</summary>
/// <remarks>
/// Immutable. Positive from the device to the ground. The DC shift is removed by the clamp of the recorder; the voltage
/// at mains frequency is what is seen in the picture. An earth-potential difference is another cause of it, and no number here gives that.
/// </remarks>
public sealed class ShieldInCondition
{
    private readonly double _dcAmperes, _acAmperes, _ohms;
    private readonly double? _ripple;

    internal ShieldInCondition(VideoLink link, Condition condition, double dcAmperes, double acAmperes, double? ripple)
    {
        Link = link;
        Condition = condition;
        _dcAmperes = dcAmperes;
        _acAmperes = acAmperes;
        _ohms = link.ShieldResistance.Ohms;
        _ripple = ripple;
    }

    /// <summary>The shield.</summary>
    public VideoLink Link { get; }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>Direct current in the shield. [A]</summary>
    public ElectricCurrent DirectCurrent => ElectricCurrent.FromAmperes(_dcAmperes);

    /// <summary>Direct voltage from its device end to its ground end: how far the picture's black level is shifted. [V]</summary>
    public ElectricPotential DcShift => ElectricPotential.FromVolts(_dcAmperes * _ohms);

    /// <summary>RMS voltage at mains frequency along the shield, or null where a DC supply does not declare its ripple. [V]</summary>
    /// <remarks>The ripple of the DC currents, and the whole current of devices on AC supplies, times the resistance;
    /// the two are added as if in phase, which is the careful side.</remarks>
    public ElectricPotential? MainsFrequencyVoltage =>
        _ripple is double ripple ? ElectricPotential.FromVolts(MainsVolts(ripple)) : null;

    internal double AbsoluteShift => Math.Abs(_dcAmperes * _ohms);

    /// <summary>Shield, condition and shift in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Link} in {Condition}: {_dcAmperes * _ohms * 1000:0.#} mV, {_dcAmperes:0.###} A");

    private double MainsVolts(double ripple) => ((Math.Abs(_dcAmperes) * ripple) + Math.Abs(_acAmperes)) * _ohms;
}
