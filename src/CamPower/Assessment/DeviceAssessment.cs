using System;
using System.Collections.Generic;
using CamPower.Assessment;
using UnitsNet;

namespace CamPower;

/// <summary>One device of a site in every condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class DeviceAssessment
{
    internal DeviceAssessment(SiteDevice device, DistributionBox box, BoxOutput output, IReadOnlyList<SiteRun> path,
        double lightLoadVolts, DeviceInCondition[] inConditions)
    {
        Device = device;
        Box = box;
        Output = output;
        Path = path;
        LightLoadVolts = lightLoadVolts;
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

    /// <summary>The most that its terminals may see while it runs: highest supply voltage, coldest cable, the least load known. [V]</summary>
    /// <remarks>A label says nothing of the least load: there it is no load at all.</remarks>
    public ElectricPotential LightLoadVoltage => ElectricPotential.FromVolts(LightLoadVolts);

    /// <summary>What its terminals see before anything draws: the highest supply voltage. [V]</summary>
    public ElectricPotential NoLoadVoltage => Box.Supply.Output.HighestVoltage;

    internal double LightLoadVolts { get; }

    /// <summary>The worst condition in words; never throws.</summary>
    public override string ToString() => Worst.ToString();
}
