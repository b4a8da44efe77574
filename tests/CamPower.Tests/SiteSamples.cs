using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using CamPower.Tests.Circuits;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>One of each public type that a solved and checked site is made of.</summary>
internal static class SiteSamples
{
    private static readonly ShareCurve<Ratio> Efficiency = new(
        new(Ratio.FromPercent(20), Ratio.FromPercent(80.5)), new(Ratio.FromPercent(100), Ratio.FromPercent(88)));

    private static readonly ShareCurve<ElectricPotential> LowLine = new(
        new(ElectricPotential.FromVolts(90.5), Ratio.FromPercent(80)), new(ElectricPotential.FromVolts(115), Ratio.FromPercent(100)));

    internal static IEnumerable<object> All()
    {
        var supply = new Supply("12.5 V", new DcOutput(ElectricPotential.FromVolts(12.5), ElectricCurrent.FromAmperes(1.5), Ratio.FromPercent(2.5)), Derating.GenericEnclosed,
            new SupplyInput(new VoltageRange(ElectricPotential.FromVolts(90.5), ElectricPotential.FromVolts(264)), ElectricCurrent.FromAmperes(30.5), Efficiency, Efficiency));
        DistributionBox box = DistributionBox.OfEqualOutputs("box", supply, outputs: 2, ElectricCurrent.FromAmperes(0.25));
        var device = new Device("dome", DeviceKind.Camera, new ComponentDraw(Load.ConstantPower(Power.FromWatts(9.5))),
            dcInput: new VoltageRange(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2)));
        var run = new SiteRun(RunOrigin.Output("box", 1), "door", Runs.OfOhms(1.25));
        var night = Condition.Night(new Surroundings(Temperature.FromDegreesCelsius(20.5), Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(20)));
        var site = new Site("shed", [night], [box], [run], [new SiteDevice("door camera", device, at: "door")],
            [new VideoLink("door camera", "recorder", ElectricResistance.FromOhms(0.95))], [new GroundBond("recorder", "box", ElectricResistance.FromOhms(0.05))]);
        SiteAssessment assessment = site.Assess();
        BoxAssessment solvedBox = assessment.Boxes[0];
        DeviceAssessment solvedDevice = assessment.Devices[0];
        Finding finding = RuleSet.Standard.Check(assessment)[0];
        return new object[]
        {
            supply, supply.Output, supply.Input!, new AcOutput(ElectricPotential.FromVolts(24.5), ElectricCurrent.FromAmperes(4), Ratio.Zero),
            supply.Derating, supply.Derating.Altitude!, supply.Derating.Ambient, supply.Derating.Ambient.Points[0], LowLine, Efficiency,
            new TerminalRange(WireSize.Awg(24), WireSize.SquareMillimeters(1.5)), box, box.Outputs[0], run, run.From, site, site.Devices[0], site.VideoLinks[0], site.Bonds[0],
            assessment, solvedBox, solvedBox.Worst, solvedBox.Outputs[0], solvedBox.Outputs[0].Worst, solvedDevice, solvedDevice.Worst,
            assessment.Shields[0], assessment.Shields[0].Worst, RuleSet.Standard, new Evidence(assessment), finding, finding.About,
            InspectionList.Standard, InspectionList.Standard.Items[0], Connector.UnifiedBarrels[2], new OutputTie("box", 1, "box", 2),
        }.Concat(RuleSet.Standard.Rules);
    }
}
