using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>The worst condition of a shield is that of the largest voltage along it, direct or at mains frequency, in any order.</summary>
public class WorstShieldTests
{
    // By hand: a third of the current goes through 0.9 Ω, 0.5 Ω of negative beside 0.9 Ω and 0.1 Ω. 0.4 A by day, 1 A at night.
    [Theory]
    [InlineData(CurrentKind.Dc, false)]
    [InlineData(CurrentKind.Dc, true)]
    [InlineData(CurrentKind.Ac, false)]
    [InlineData(CurrentKind.Ac, true)]
    public void Worst_IsTheOneOfMostVoltage(CurrentKind kind, bool isNightFirst)
    {
        Temperature twenty = Temperature.FromDegreesCelsius(20);
        var at = new Surroundings(twenty, twenty, twenty);
        Condition[] conditions = [Condition.Day(at), Condition.Night(at)];
        var any = new VoltageRange(ElectricPotential.FromVolts(5), ElectricPotential.FromVolts(60));
        var draw = new ShareDraw(Amperes(0.4), infrared: Amperes(0.6));
        var camera = new SiteDevice("camera 1", new Device("camera", DeviceKind.Camera, draw, dcInput: any, acInput: any), "1");
        var site = new Site("returns", isNightFirst ? [.. conditions.Reverse()] : conditions, [ReturnSites.Box("a", 24, kind: kind)],
            [ReturnSites.Run("a", 1, "1", 1.0)], [camera], [ReturnSites.Link(1, "g", 0.9)], [ReturnSites.Bond("g", "a", 0.1)]);
        ShieldAssessment shield = site.Assess().Shields[0];
        Assert.Equal("night", shield.Worst.Condition.Name);
        Assert.Equal(0.3, kind == CurrentKind.Dc ? shield.Worst.DcShift.Volts : shield.Worst.MainsFrequencyVoltage!.Value.Volts, 1e-9);
    }

    private static Load Amperes(double amperes) => Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));
}
