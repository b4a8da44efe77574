using System.Collections.Generic;
using System.Linq;
using CamPower;
using UnitsNet;

namespace Consumers.NetStandard;

/// <summary>What a desktop tool might ask of the library: one run with its working, a small site, its box and its trim.</summary>
public static class GatePlan
{
    private static readonly Surroundings Mild = new(cable: Temperature.FromDegreesCelsius(25),
        box: Temperature.FromDegreesCelsius(35), camera: Temperature.FromDegreesCelsius(20));

    /// <summary>The lines that it prints.</summary>
    public static IEnumerable<string> Lines() => OneRun().Concat(WholeSite());

    private static IEnumerable<string> OneRun()
    {
        var cable = Cable.Pair(WireSize.Awg(18), Stranding.ClassB, ConductorMaterial.AnnealedCopper);
        var run = new CableRun(cable, oneWayLength: Length.FromFeet(120));
        Load camera = Load.ConstantPower(Power.FromWatts(9));
        RunResult fed = run.Feed(camera, from: ElectricPotential.FromVolts(12), conductorAt: Temperature.FromDegreesCelsius(40));
        yield return fed.ToString();
        yield return run.LongestLength(camera, ElectricPotential.FromVolts(12), VoltageLimit.AtLeast(ElectricPotential.FromVolts(10.8)),
            Temperature.FromDegreesCelsius(40)).ToString();
        foreach (DerivationStep step in fed.Explain().Steps) yield return step.ToString();
    }

    private static IEnumerable<string> WholeSite()
    {
        SiteAssessment assessment = Gate().Assess();
        foreach (DeviceInCondition device in assessment.Devices.SelectMany(d => d.InConditions)) yield return device.ToString();
        foreach (Finding finding in RuleSet.Standard.Check(assessment)) yield return finding.ToString();
        yield return assessment.Site.TrimWindowOf("gate box").ToString();
        yield return assessment.Site.SmallestBoxFor("gate box", BoxCatalog.Generic, SizingPolicy.CommonPractice).ToString();
    }

    private static Site Gate()
    {
        var dome = new Device("infrared dome", DeviceKind.Camera,
            new ComponentDraw(Load.ConstantPower(Power.FromWatts(3.6)), infrared: Load.ConstantPower(Power.FromWatts(4.8))),
            dcInput: new VoltageRange(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2)));
        var output = new DcOutput(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(5), tolerance: Ratio.FromPercent(2),
            trim: new VoltageRange(ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(14)));
        var supply = new Supply("12 V, 5 A", output, Derating.GenericEnclosed);
        return new Site("gate", [Condition.Day(Mild), Condition.Night(Mild)],
            [DistributionBox.OfEqualOutputs("gate box", supply, outputs: 4, limit: ElectricCurrent.FromAmperes(1.1))],
            [new SiteRun(RunOrigin.Output("gate box", 1), to: "post", new CableRun(CableCatalog.Pair18, Length.FromFeet(140)))],
            [new SiteDevice("post camera", dome, at: "post")]);
    }
}
