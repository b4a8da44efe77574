using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower;

/// <summary>One video shield in one condition: its current and voltages.</summary>
/// <remarks>
/// Immutable. Positive from the device to the ground. The DC shift is removed by the clamp of the recorder; the voltage
/// at mains frequency is what is seen in the picture. An earth-potential difference is another cause of it, and no number here gives that.
/// Devices that are not up count as drawing nothing.
/// </remarks>
public sealed class ShieldInCondition
{
    private readonly double _amperes, _ohms;
    private readonly double? _mainsAmperes;

    internal ShieldInCondition(VideoLink link, Condition condition, double amperes, double? mainsAmperes)
        : this(link, condition)
    {
        HasOperatingPoint = true;
        _amperes = amperes;
        _mainsAmperes = mainsAmperes;
    }

    internal ShieldInCondition(VideoLink link, Condition condition)
    {
        Link = link;
        Condition = condition;
        _ohms = link.ShieldResistance.Ohms;
    }

    /// <summary>The shield.</summary>
    public VideoLink Link { get; }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>Whether what is joined to it has an operating point; without one it is not known what it carries.</summary>
    public bool HasOperatingPoint { get; }

    /// <summary>Direct current in the shield. [A]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricCurrent DirectCurrent => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>Direct voltage from its device end to its ground end: how far the picture's black level is shifted. [V]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricPotential DcShift => ElectricPotential.FromVolts(Amperes * _ohms);

    /// <summary>RMS voltage at mains frequency along the shield, or null where a DC supply does not declare its ripple or there is no
    /// operating point. [V]</summary>
    /// <remarks>The ripple of the DC currents, and the whole current of devices on AC supplies, times the resistance. What several boxes
    /// cause is added as if in phase, which is the careful side: the phase of their ripples is not known.</remarks>
    public ElectricPotential? MainsFrequencyVoltage =>
        _mainsAmperes is double amperes ? ElectricPotential.FromVolts(amperes * _ohms) : null;

    internal double LargestVolts => Math.Max(Math.Abs(_amperes * _ohms), MainsVolts ?? 0);

    internal double? MainsVolts => _mainsAmperes * _ohms;

    /// <summary>How both voltages follow from the currents in the shield.</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Derivation Explain()
    {
        string ohms = DerivationStep.Number(_ohms);
        var steps = new List<DerivationStep>
        {
            new("shift", "Direct voltage along the shield: the clamp removes it", "I*R", @"\Delta V = I R",
                $"{DerivationStep.Number(Amperes)}*{ohms}", Amperes * _ohms, "V", Sources.Kirchhoff),
        };
        if (_mainsAmperes is double mains)
        {
            steps.Add(new("hum", "Voltage at mains frequency along the shield, RMS: it is seen", "Im*R", "V_m = I_m R",
                $"{DerivationStep.Number(mains)}*{ohms}", mains * _ohms, "V", Sources.Kirchhoff));
        }

        return new Derivation($"{Link} in {Condition}", steps, _mainsAmperes is null
            ? "A supply does not declare its ripple: what is seen at mains frequency is not known."
            : "The first is removed, the second is seen.");
    }

    /// <summary>Shield, condition and shift in the invariant culture; never throws.</summary>
    public override string ToString() => HasOperatingPoint
        ? FormattableString.Invariant($"{Link} in {Condition}: {_amperes * _ohms * 1000:0.#} mV, {_amperes:0.###} A")
        : $"{Link} in {Condition}: no operating point";

    private double Amperes => HasOperatingPoint
        ? _amperes
        : throw new InvalidOperationException(
            $"There is no operating point in {Condition}: what the {Link} carries is not known. Ask HasOperatingPoint first.");
}
