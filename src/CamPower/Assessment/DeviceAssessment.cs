using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>One device of a site in every condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class DeviceAssessment
{
    private readonly DeviceInCondition[] _inConditions;

    internal DeviceAssessment(SiteDevice device, DistributionBox box, BoxOutput output, IReadOnlyList<SiteRun> path,
        double lightLoadVolts, DeviceInCondition[] inConditions)
    {
        Device = device;
        Box = box;
        Output = output;
        Path = path;
        LightLoadVolts = lightLoadVolts;
        _inConditions = inConditions;
        InConditions = Array.AsReadOnly(inConditions);
        Worst = WorstCase.Of(inConditions, (a, b) => a.IsWorseThan(b));
    }

    /// <summary>The device.</summary>
    public SiteDevice Device { get; }

    /// <summary>The box that feeds it.</summary>
    public DistributionBox Box { get; }

    /// <summary>The output that feeds it.</summary>
    public BoxOutput Output { get; }

    /// <summary>The runs between the output and the device, in order.</summary>
    public IReadOnlyList<SiteRun> Path { get; }

    /// <summary>The device in each condition, in the site's order.</summary>
    public IReadOnlyList<DeviceInCondition> InConditions { get; }

    /// <summary>The condition that is worst for it: by state first, by voltage then.</summary>
    public DeviceInCondition Worst { get; }

    /// <summary>Highest voltage at its terminals while it runs: highest supply voltage, coldest cable, smallest known load. [V]</summary>
    /// <remarks>A label states no minimum load. For a label the minimum is zero.</remarks>
    public ElectricPotential LightLoadVoltage => ElectricPotential.FromVolts(LightLoadVolts);

    /// <summary>Voltage at its terminals before any device draws: the highest supply voltage. [V]</summary>
    public ElectricPotential NoLoadVoltage => ElectricPotential.FromVolts(VoltsBeforeItDraws);

    /// <summary>The voltage at light load against the highest that it accepts; at the crest of the ripple, where that is stated and above
    /// 1 %.</summary>
    /// <remarks>A set point is as exact as the meter that it is set with: a supply that can be trimmed has 0.5 % as its margin
    /// (<see cref="Sources.SetPointPractice"/>).</remarks>
    public Judgment AtLightLoad => AtMostAccepted(CrestVolts,
        Box.Supply.Output is DcOutput { Trim: not null } ? SupplyConstants.SetPointUncertainty.Value / 100 : 0);

    /// <summary>The voltage before it draws anything against the highest that it accepts.</summary>
    public Judgment BeforeItDraws => AtMostAccepted(VoltsBeforeItDraws * (1 + RippleSwing));

    /// <summary>What its supply is marked with, or set to where that is less, against the highest that it accepts.</summary>
    /// <remarks>One that is only set too high can be set lower.</remarks>
    public Judgment OfSupply => AtMostAccepted(Math.Min(Box.Supply.Output.NominalVolts, Box.Supply.Output.SetVolts));

    /// <summary>Whether it is up, starts and stays inside the voltage that it accepts, in every condition and at light load.</summary>
    public Verdict Verdict => AtLightLoad.IsViolated || Array.Exists(_inConditions, c => c.Verdict == Verdict.Violated)
        ? Verdict.Violated
        : Array.Exists(_inConditions, c => c.Verdict == Verdict.Unknown) ? Verdict.Unknown : Verdict.Holds;

    internal double LightLoadVolts { get; }

    /// <summary>The voltage at light load at the crest of the ripple of its supply. [V]</summary>
    internal double CrestVolts => LightLoadVolts * (1 + RippleSwing);

    private double RippleSwing => (Box.Supply.Output as DcOutput)?.RippleSwing ?? 0;

    private double VoltsBeforeItDraws => UnregulatedRail.Unloaded(Box, InConditions.Select(c => c.Condition));

    /// <summary>The worst condition in words; never throws.</summary>
    public override string ToString() => Worst.ToString();

    // Nothing is held against a device that accepts no voltage of this kind of current.
    private Judgment AtMostAccepted(double volts, double margin = 0) => Worst.Accepted is VoltageRange accepted
        ? Judgment.AtMost(volts, accepted.HighestVolts, accepted.HighestVolts * (1 - margin), v => ElectricPotential.FromVolts(v))
        : default;
}
