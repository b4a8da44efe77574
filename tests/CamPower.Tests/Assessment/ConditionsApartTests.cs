using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>A site of three conditions that differ in everything gives each of them what a site of that one alone gives, in any order.</summary>
public class ConditionsApartTests
{
    private static readonly Condition[] Three =
    [
        new("cold", LoadComponents.Heater, Air(-20, -15, 0)),
        new("mild", LoadComponents.Infrared | LoadComponents.Motor, Air(25, 30, 200), motorsMoving: 1, lineVoltage: Volts(207)),
        new("hot", LoadComponents.Infrared | LoadComponents.StartUp, Air(60, 45, 900), lineVoltage: Volts(253)),
    ];

    public static TheoryData<int, int, int> Orders => new() { { 0, 1, 2 }, { 0, 2, 1 }, { 1, 0, 2 }, { 1, 2, 0 }, { 2, 0, 1 }, { 2, 1, 0 } };

    [Theory]
    [MemberData(nameof(Orders))]
    public void EachCondition_IsItsOwn(int first, int second, int third)
    {
        Condition[] order = [Three[first], Three[second], Three[third]];
        SiteAssessment together = In(order).Assess();
        for (int c = 0; c < order.Length; c++)
        {
            SiteAssessment alone = In([order[c]]).Assess();
            Assert.Equal(Numbers(alone, 0), Numbers(together, c));
            Assert.Equal(3, order.Select((_, other) => string.Join(' ', Numbers(together, other))).Distinct().Count());
        }

        // The least load is seen through the coldest cable of all.
        double coldest = In([Three[0]]).Assess().Devices[0].LightLoadVoltage.Volts;
        Assert.Equal(coldest, together.Devices[0].LightLoadVoltage.Volts);
        Assert.NotEqual(coldest, In([Three[1]]).Assess().Devices[0].LightLoadVoltage.Volts);
    }

    private static IEnumerable<object?> Numbers(SiteAssessment assessment, int c)
    {
        foreach (DeviceAssessment device in assessment.Devices)
        {
            DeviceInCondition found = device.InConditions[c];
            yield return (found.State, found.Start, found.SolvedVoltage?.Volts, found.Voltage.Volts, found.UnloadedVoltage?.Volts, found.Verdict);
        }

        BoxInCondition box = assessment.Boxes[0].InConditions[c];
        yield return (box.TotalCurrent.Amperes, box.DeratedRating.Amperes, box.InsideTemperature?.DegreesCelsius, box.SupplyState, box.SupplyVoltage?.Volts);
        yield return (box.StartingCurrent, box.ReturningCurrent, box.HottestAir, box.ColdestAir, box.Load(Ratio.FromPercent(80)));
        foreach (OutputAssessment output in assessment.Boxes[0].Outputs) yield return (output.InConditions[c].Amperes, output.InConditions[c].OfProtection, output.InConditions[c].OfLimit);
    }

    private static Surroundings Air(double cable, double box, double sun) => new(Temperature.FromDegreesCelsius(cable), Temperature.FromDegreesCelsius(box),
        Temperature.FromDegreesCelsius(20), Irradiance.FromWattsPerSquareMeter(sun));

    // High above the sea, in the sun, behind resettable fuses, and beyond the limit in the heat.
    private static Site In(Condition[] conditions)
    {
        var derating = new Derating(Derating.GenericEnclosed.Ambient, new ShareCurve<ElectricPotential>(new(Volts(200), Ratio.FromPercent(90)), new(Volts(260), Ratio.FromPercent(100))), AltitudeDerating.Generic);
        var output = new DcOutput(Volts(12.5), ElectricCurrent.FromAmperes(4), Ratio.FromPercent(1), overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(4.4)));
        var supply = new Supply("supply", output, derating, Dc().WithEfficiency(0.85).Input);
        var enclosure = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        DistributionBox box = SmallSite.Box(supply, protection: ResettableFuse.Generic16Volt[5], limit: 2).WithEnclosure(enclosure);
        var draw = new ComponentDraw(Watts(5), infrared: Watts(4), motor: Watts(3), heater: Ohms(30), startUp: Watts(2));
        Device camera = Camera(draw, Range(9, 15), Starts(9, 7));
        var run = new CableRun(Runs.Eighteen, Length.FromMeters(18));
        return new Site("site", conditions, [box],
            [.. Enumerable.Range(1, 3).Select(n => new SiteRun(RunOrigin.Output(BoxName, n), $"place {n}", run))],
            [.. Enumerable.Range(1, 3).Select(n => new SiteDevice($"camera {n}", camera, $"place {n}"))], altitude: Length.FromMeters(3000));
    }
}
