using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>What the air inside does to a feed and to a verdict, and what is said where there is no operating point.</summary>
public class WarmAndSilentTests
{
    private static readonly Enclosure OnWall = new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15),
        EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);

    // 0.14 Ω at 20 °C, 1 % more for each kelvin of the air inside (common practice), which 12 V · 8 A · (1/0.85 − 1) = 16.9 W warm.
    [Fact]
    public void AResettableFuse_IsAsWarmAsTheAirInside_InTheFeedToo()
    {
        DistributionBox box = Box(Dc(amperes: 10).WithEfficiency(0.85), protection: SmallDevices.Printed(1.10)).WithEnclosure(OnWall);
        SiteAssessment found = Star(box, [Condition.Day(At(box: 30))], (0.3, Camera(Amperes(3))), (0.3, Camera(Amperes(5)))).Assess();
        double inside = found.Boxes[0].Worst.InsideTemperature!.Value.DegreesCelsius, ohms = 0.14 * (1 + (0.01 * (inside - 20)));
        Assert.InRange(inside, 40, 80);
        Assert.Equal(12 - (3 * (ohms + 0.3)), found.Devices[0].Worst.Voltage.Volts, 1e-3);
        Assert.Equal(12 - (5 * (ohms + 0.3)), found.Devices[1].Worst.Voltage.Volts, 1e-3);
    }

    // The model is good to a quarter of the rise: the policy limit is what is left at one that much higher.
    [Fact]
    public void ARatingAtACalculatedTemperature_HasAQuarterOfTheRiseAsItsMargin()
    {
        DistributionBox declared = Box(Dc(amperes: 10).WithEfficiency(0.85)).WithEnclosure(OnWall);
        BoxInCondition box = Star(declared, [Condition.Day(At(box: 40))], (0, Camera(Amperes(7.6)))).Assess().Boxes[0].Worst;
        double inside = box.InsideTemperature!.Value.DegreesCelsius, quarter = (inside - 40) / 4;
        Judgment load = box.Load(Ratio.FromPercent(100));
        Assert.Equal(10 * (1 - (0.025 * (inside - 50))), ((ElectricCurrent)load.Limit!).Amperes, 1e-6);
        Assert.Equal(10 * (1 - (0.025 * (inside + quarter - 50))), ((ElectricCurrent)load.PolicyLimit!).Amperes, 1e-6);
    }

    // 1 Ω carries at most 36 W of 12 V: with 40 W nothing balances, also not for the 5 W beside them while those draw nothing.
    [Fact]
    public void WithoutAnOperatingPoint_ThereIsADemandAndNoVoltage()
    {
        SiteAssessment found = Shared(1, Camera(Watts(40)), Camera(Watts(5))).Assess();
        Assert.Null(found.Devices[1].Worst.UnloadedVoltage);
        Assert.Null(found.Devices[1].Worst.SolvedVoltage);
        Assert.Equal("camera 2 in day: NoOperatingPoint", found.Devices[1].Worst.ToString());
        Assert.Equal("day: asked for 3.75 A of 100 A", found.Boxes[0].Worst.ToString());
        Assert.Equal("day: 2 A of 100 A", Shared(0, Camera(Amperes(2))).Assess().Boxes[0].Worst.ToString());
        Assert.Equal(11.5678, Shared(1, Camera(Watts(40)), Camera(Watts(5))).Assess().Devices[0].Worst.UnloadedVoltage!.Value.Volts, 1e-3);
    }

    // 9 W behind 1 Ω: 6 + √(36 − 9) = 11.196 V and 0.804 A; it has 12 V unloaded, and never turns on at 12.1 V.
    [Theory]
    [InlineData(11.9, "camera 1 in day: 11.196 V, 0.804 A")]
    [InlineData(12.1, "camera 1 in day: 11.196 V, 0.804 A, but would not start")]
    public void ADeviceSaysWhetherItWouldStart(double turnOn, string expected) =>
        Assert.Equal(expected, Single(1, Camera(Watts(9), Range(9, 15), Starts(turnOn, 8))).Assess().Devices[0].Worst.ToString());
}
