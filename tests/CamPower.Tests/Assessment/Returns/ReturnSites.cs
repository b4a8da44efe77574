using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>Sites whose return currents divide, each of a committed deck of the same name, written by hand.</summary>
/// <remarks>"camera 1" of a site stands between p1 and n1 of the deck. A run of r ohms has r/2 in each pole. Invented.</remarks>
internal static class ReturnSites
{
    internal static readonly Surroundings Mild = new(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(20));

    internal static Dictionary<string, Site> All() => new(StringComparer.Ordinal)
    {
        ["shared-negative"] = Of([Box("a", 12)],
            [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.2, "1"), Run("a", 3, "3", 1.4, "1")],
            [Watts(1, 9), Watts(2, 7), Watts(3, 5)]),
        ["doubled-positive"] = Of([Box("a", 12)],
            [new SiteRun(RunOrigin.Output("a", 1), "1", new CableRun(Doubled, oneWayLength: Length.FromMeters(58))), Run("a", 2, "2", 1.2, "1")],
            [Watts(1, 9), Watts(2, 7)]),
        ["chain"] = Of([Box("a", 12)],
            [Run("a", 1, "1", 0.4), Next("1", "2", 0.6), Next("2", "3", 0.8)],
            [Watts(1, 5), Watts(2, 5), Watts(3, 5)]),
        ["shields-bonded"] = Of([Box("a", 12)],
            [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.8)], [Watts(1, 9), Watts(2, 6)],
            [Link(1, "g", 0.9), Link(2, "g", 0.6)], [Bond("g", "a", 0.05)]),
        ["fused-outputs"] = Of([Box("a", 12, protection: [0.14, 0.3])],
            [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.8)], [Watts(1, 9), Watts(2, 6)],
            [Link(1, "g", 0.9), Link(2, "g", 0.6)], [Bond("g", "a", 0.05)]),
        ["shields-alone"] = Of([Box("a", 12)],
            [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.8)], [Watts(1, 9), Watts(2, 6)],
            [Link(1, "g", 0.9), Link(2, "g", 0.6)]),
        ["chain-with-shields"] = Of([Box("a", 24)],
            [Run("a", 1, "1", 2.0), Next("1", "2", 3.0), Run("a", 2, "3", 5.0, "2")], [Watts(1, 9), Watts(2, 6), Watts(3, 4)],
            [Link(1, "g", 1.1), Link(2, "g", 0.7), Link(3, "g", 0.4)], [Bond("g", "a", 0.2)]),
        ["two-boxes-one-ground"] = Of([Box("a", 12), Box("b", 24)],
            [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.6), Run("b", 1, "3", 2.0), Run("b", 2, "4", 3.0)],
            [Watts(1, 9), Watts(2, 6), Watts(3, 12), Watts(4, 8)],
            [Link(1, "g", 0.9), Link(2, "g", 0.6), Link(3, "g", 0.8), Link(4, "g", 0.5)], [Bond("g", "a", 0.1)]),
        ["two-boxes-two-grounds"] = Of([Box("a", 12), Box("b", 24)],
            [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.6), Run("b", 1, "3", 2.0), Run("b", 2, "4", 3.0)],
            [Watts(1, 9), Watts(2, 6), Watts(3, 12), Watts(4, 8)],
            [Link(1, "g", 0.9), Link(2, "h", 0.6), Link(3, "g", 0.8), Link(4, "h", 0.5)]),
        ["ring-of-bonds"] = Of([Box("a", 12), Box("b", 24)],
            [Run("a", 1, "1", 1.0), Run("b", 1, "2", 2.0)], [Watts(1, 9), Watts(2, 12)],
            [Link(1, "g", 0.9), Link(2, "h", 0.8)], [Bond("g", "b", 0.1), Bond("h", "a", 0.2)]),
    };

    /// <summary>At 20 °C 58 m of annealed copper, 1/58 Ω·mm²/m: 1/3 Ω out and 2/3 Ω back.</summary>
    internal static Cable Doubled => new(
        new Conductor(WireSize.SquareMillimeters(3), Stranding.Solid, ConductorMaterial.AnnealedCopper),
        new Conductor(WireSize.SquareMillimeters(1.5), Stranding.Solid, ConductorMaterial.AnnealedCopper));

    internal static Site Of(IEnumerable<DistributionBox> boxes, IEnumerable<SiteRun> runs, IEnumerable<SiteDevice> devices,
        IEnumerable<VideoLink>? links = null, IEnumerable<GroundBond>? bonds = null) =>
        new("returns", [Condition.Day(Mild)], boxes, runs, devices, links, bonds);

    internal static DistributionBox Box(string name, double volts, double? ripplePercent = null, CurrentKind kind = CurrentKind.Dc) =>
        DistributionBox.OfEqualOutputs(name, new Supply($"{name} supply", Output(volts, ripplePercent, kind), Derating.GenericEnclosed), outputs: 4, ElectricCurrent.FromAmperes(5));

    /// <summary>A box whose outputs have protective devices of these resistances.</summary>
    private static DistributionBox Box(string name, double volts, double[] protection) => new(name, new Supply($"{name} supply", Output(volts, null, CurrentKind.Dc), Derating.GenericEnclosed),
        protection.Select((ohms, i) => new BoxOutput(i + 1, ElectricCurrent.FromAmperes(5), SmallSite.SeriesOhms(ohms))));

    private static SupplyOutput Output(double volts, double? ripplePercent, CurrentKind kind) => kind == CurrentKind.Ac
        ? new AcOutput(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(20), Ratio.Zero)
        : new DcOutput(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(20), Ratio.Zero, ripple: ripplePercent is double p ? Ratio.FromPercent(p) : null);

    internal static SiteRun Run(string box, int output, string to, double loopOhms, string? returnAt = null) =>
        new(RunOrigin.Output(box, output), to, Runs.OfOhms(loopOhms), returnAt);

    internal static SiteRun Next(string from, string to, double loopOhms) => new(RunOrigin.Junction(from), to, Runs.OfOhms(loopOhms));

    internal static SiteDevice Watts(int number, double watts) => Device(number, Load.ConstantPower(Power.FromWatts(watts)));

    internal static SiteDevice Amperes(int number, double amperes) => Device(number, Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes)));

    internal static SiteDevice Device(int number, Load load, Starting? starting = null)
    {
        var any = new VoltageRange(ElectricPotential.FromVolts(5), ElectricPotential.FromVolts(60));
        string name = FormattableString.Invariant($"camera {number}");
        return new SiteDevice(name, new Device(name, DeviceKind.Camera, new ComponentDraw(load), dcInput: any, acInput: any, starting: starting), at: FormattableString.Invariant($"{number}"));
    }

    internal static VideoLink Link(int camera, string ground, double ohms) =>
        new(FormattableString.Invariant($"camera {camera}"), ground, ElectricResistance.FromOhms(ohms));

    internal static GroundBond Bond(string ground, string box, double ohms) => new(ground, box, ElectricResistance.FromOhms(ohms));

    /// <summary>Voltages of the cameras, in the site's order. [V]</summary>
    internal static double[] Volts(Site site) => [.. site.Assess().Devices.Select(d => (double)d.Worst.Voltage.Volts)];
}
