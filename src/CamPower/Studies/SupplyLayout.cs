using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Studies;
using UnitsNet;

namespace CamPower;

/// <summary>One way of feeding some devices of a site, in the figures that ways are compared by.</summary>
/// <remarks>Immutable. Only the boxes and adapters that feed these devices count.</remarks>
public sealed class SupplyLayout
{
    private readonly DeviceInCondition? _least;

    internal SupplyLayout(Site site, ISet<string> deviceNames)
    {
        SiteAssessment assessment = site.Assess();
        IReadOnlyList<DeviceAssessment> devices = [.. assessment.Devices.Where(d => deviceNames.Contains(d.Device.Name))];
        var boxes = new HashSet<DistributionBox>(devices.Select(d => d.Box));
        Site = site;
        Assessment = assessment;
        Devices = devices.Count;
        DevicesInWindow = devices.Count(d => d.Verdict == Verdict.Holds);
        Supplies = Array.AsReadOnly([.. assessment.Boxes.Where(b => boxes.Contains(b.Box))]);
        MostLoaded = Supplies.OrderByDescending(b => LoadingOf(b)).First();
        CableLength = Length.FromMeters(devices.SelectMany(d => d.Path).Distinct().Sum(run => run.Run.OneWayLength.Meters));

        DeviceInCondition[] all = [.. devices.SelectMany(d => d.InConditions)];
        bool areAllUp = Array.TrueForAll(all, d => d.State == DeviceState.Up && d.Accepted is not null);
        _least = areAllUp ? all.OrderBy(d => d.MarginVolts).FirstOrDefault() : null;
        CableLoss = Power.FromWatts(site.Conditions.Max(WattsLost));

        double WattsLost(Condition condition) => devices.Sum(d => LossOf(d, condition));
    }

    /// <summary>The site fed in this way.</summary>
    public Site Site { get; }

    /// <summary>It solved.</summary>
    public SiteAssessment Assessment { get; }

    /// <summary>Number of devices that are compared.</summary>
    public int Devices { get; }

    /// <summary>How many of them are up, start and stay inside the voltage that they accept in every condition.</summary>
    public int DevicesInWindow { get; }

    /// <summary>The boxes or adapters that feed them: so many supplies, and so many mains receptacles.</summary>
    public IReadOnlyList<BoxAssessment> Supplies { get; }

    /// <summary>The one that is loaded most, against its derated rating.</summary>
    public BoxAssessment MostLoaded { get; }

    /// <summary>The load of that one in its worst condition, over its derated rating; null where it may not deliver anything there.
    /// [%]</summary>
    public Ratio? Loading => double.IsInfinity(LoadingOf(MostLoaded)) ? null : Ratio.FromPercent(LoadingOf(MostLoaded) * 100);

    /// <summary>The device and condition with the least voltage above the lowest accepted; null where some device is not up.</summary>
    public DeviceInCondition? Least => _least;

    /// <summary>That voltage; null where some device is not up. [V]</summary>
    public ElectricPotential? WorstMargin => _least?.Margin;

    /// <summary>Cable that is laid to them, one way.</summary>
    public Length CableLength { get; }

    /// <summary>Power lost on the way to the devices that are up, in the condition in which it is most: in the cables and in the protective
    /// devices of the outputs. [W]</summary>
    /// <remarks>From the lowest supply voltage; every ampere that a device draws loses the voltage between supply and device.
    /// What the supplies themselves lose is not in it.</remarks>
    public Power CableLoss { get; }

    /// <summary>The figures in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        string loading = Loading is Ratio ratio ? FormattableString.Invariant($"{ratio.Percent:0.#} %") : "not rated to run";
        string margin = WorstMargin is ElectricPotential volts
            ? FormattableString.Invariant($"{volts.Volts:0.00} V ({_least!.Device}, {_least.Condition})")
            : "none, not all are up";
        return FormattableString.Invariant(
            $"{DevicesInWindow} of {Devices} in their windows, worst margin {margin}, most loaded {MostLoaded.Box} {loading}, ")
                + FormattableString.Invariant($"supplies and receptacles: {Supplies.Count}, ")
                    + FormattableString.Invariant($"{CableLength.Meters:0.#} m of cable losing {(double)CableLoss.Watts:0.0} W");
    }

    private static double LoadingOf(BoxAssessment box) => box.Worst.Amperes > 0 ? box.Worst.Amperes / box.Worst.DeratedAmperes : 0;

    private static double LossOf(DeviceAssessment device, Condition condition)
    {
        DeviceInCondition inCondition = device.InConditions.Single(d => ReferenceEquals(d.Condition, condition));
        return inCondition.AmperesDrawn > 0 ? inCondition.AmperesDrawn * (inCondition.SupplyVolts - inCondition.UpVolts) : 0;
    }
}
