using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>Which condition of a box is the worst, and what several outputs and motors take together. Numbers by hand.</summary>
public class WorstAndTogetherTests
{
    // 7.2 A of the 7.5 A that 10 A are in 60 °C (half at 70 °C; common practice) are worse than 9.4 A of 10 A; of two that take the same part the one of more current counts.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void TheWorstCondition_IsByThePartOfTheRating(bool isHotFirst)
    {
        Condition hot = new("hot", LoadComponents.None, At(box: 60)), mild = new("mild", LoadComponents.Infrared, At());
        Site site = Star(Box(Dc(amperes: 10)), isHotFirst ? [hot, mild] : [mild, hot], (0, Camera(new ComponentDraw(Amperes(7.2), infrared: Amperes(2.2)))));
        Assert.Equal("hot", site.Assess().Boxes[0].Worst.Condition.Name);
    }

    // Two cameras of 1 A, each with a motor of 2 A, return together, and one motor moves at a time: 4 A, whether they have outputs of their own or not.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void AStart_IsOfTheMotorsThatMove(bool isOneOutput)
    {
        Device camera = Camera(new ComponentDraw(Amperes(1), motor: Amperes(2)), starting: AtOnce(6, 5));
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(20), Ratio.Zero,
            overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(20)), rise: Duration.FromSeconds(0.1)), Derating.GenericEnclosed);
        var moving = new Condition("moving", LoadComponents.Motor, At(), motorsMoving: 1);
        SiteRun[] runs =
        [
            new(RunOrigin.Output(BoxName, 1), "one", Runs.OfOhms(0.1)),
            isOneOutput ? new(RunOrigin.Junction("one"), "two", Runs.OfOhms(0.1)) : new(RunOrigin.Output(BoxName, 2), "two", Runs.OfOhms(0.1), returnAt: "one"),
        ];
        var site = new Site("site", [moving], [Box(supply)], runs, [new SiteDevice("first", camera, "one"), new SiteDevice("second", camera, "two")]);
        BoxInCondition box = site.Assess().Boxes[0].Worst;
        Assert.Equal(4, box.TotalCurrent.Amperes, 1e-9);
        Assert.Equal(4, ((ElectricCurrent)box.StartingCurrent.Value!).Amperes, 1e-9);
    }

    // A supply that pulses from 5 A on: whether the 40 A of the first camera's own start make it pulse is not known, but a camera that starts is not running. The 2 A of the second one leave
    // it at 12 V less (0.5 A) through 0.1 Ω.
    [Fact]
    public void ItsOwnStart_IsNoDip()
    {
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(4), Ratio.Zero,
            overload: OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(5), Duration.FromMilliseconds(50), Duration.FromSeconds(1))), Derating.GenericEnclosed);
        Site site = Star(Box(supply), [Condition.Day(At())], (0.1, Charging(0.5, 40)), (0.1, Charging(0.3, 2)));
        Assert.Equal([Verdict.Holds, Verdict.Unknown], site.Assess().Devices.Select(d => d.Worst.DuringInrush.Verdict));
        Assert.Equal(11.95, ((ElectricPotential)site.Assess().Devices[0].Worst.DuringInrush.Value!).Volts, 1e-9);
    }

    // 4 A that are switched on beside 0.5 A and 0.3 A are 4.8 A of a limit of 5 A: the voltage of the box stays, and the other camera keeps 12 V less 0.3 A through 0.1 Ω.
    [Fact]
    public void WhatFlowsAlready_CountsOnce()
    {
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(4), Ratio.Zero,
            overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(5))), Derating.GenericEnclosed);
        var switching = new Device("switching", DeviceKind.Camera, new ComponentDraw(Amperes(0.5), infrared: Amperes(0.001)), Wide, starting: Starts(9, 8),
            switchedInrush: new Inrush(ElectricCurrent.FromAmperes(4.1), Duration.FromMilliseconds(3)));
        Site site = Star(Box(supply), [Condition.Night(At())], (0.1, switching), (0.1, Camera(Amperes(0.3), starting: Starts(9, 8))));
        Assert.Equal(11.97, ((ElectricPotential)site.Assess().Devices[1].Worst.DuringInrush.Value!).Volts, 1e-9);
    }

    // A resettable fuse of 1.10 A loses 1 % of it a kelvin (typical): with a quarter more of a rise of some 25 K more than the 5 points by which the curve is uncertain. 5 A at 60 % lose 40 W.
    [Fact]
    public void ATripCurrent_IsThatOfTheHotterAir()
    {
        var wall = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        var box = new DistributionBox(BoxName, Dc(amperes: 10).WithEfficiency(0.55),
            [new BoxOutput(1, ElectricCurrent.FromAmperes(10), Protection.SmallDevices.Printed(1.10)), new BoxOutput(2, ElectricCurrent.FromAmperes(10), ProtectiveDevice.None)]);
        SiteAssessment solved = Star(box.WithEnclosure(wall), [Condition.Day(At(box: 21))], (0, Camera(Amperes(0.3))), (0, Camera(Amperes(5.2)))).Assess();
        double inside = solved.Boxes[0].Worst.InsideTemperature!.Value.DegreesCelsius, quarter = (inside - 21) / 4;
        Assert.True(quarter > 5.1);
        Assert.Equal(1.10 * (1 - (0.01 * (inside + quarter - 20))), ((ElectricCurrent)solved.Boxes[0].Outputs[0].InConditions[0].OfProtection.PolicyLimit!).Amperes, 1e-6);
    }

    // None waits before it starts, and the supply takes a tenth of a second to rise.
    private static Starting AtOnce(double turnOn, double dropOut) => new(Volts(turnOn), Volts(dropOut), softStart: true, delay: Duration.Zero);

    private static Device Charging(double amperes, double peak) => new("model", DeviceKind.Camera, new ComponentDraw(Amperes(amperes)), Wide,
        starting: new Starting(Volts(9), Volts(8), softStart: true, holdUp: Duration.FromMilliseconds(5)), inrush: new Inrush(ElectricCurrent.FromAmperes(peak), Duration.FromMilliseconds(2)));
}
