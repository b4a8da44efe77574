using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>The worst condition of a shield is the one with the largest voltage along it, wherever it is listed, be that direct or at mains frequency.</summary>
public class WorstShieldTests
{
    // By hand: a third of the current goes through 0.9 Ω, 0.5 Ω of negative beside 0.9 Ω and 0.1 Ω. 0.4 A by day, 1 A at night: 0.12 V and 0.3 V.
    [Theory]
    [InlineData(CurrentKind.Dc, false)]
    [InlineData(CurrentKind.Dc, true)]
    [InlineData(CurrentKind.Ac, false)]
    [InlineData(CurrentKind.Ac, true)]
    public void Worst_IsTheOneOfMostVoltage(CurrentKind kind, bool isNightFirst)
    {
        var at = new Surroundings(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(20));
        Condition[] conditions = [Condition.Day(at), Condition.Night(at)];
        var any = new VoltageRange(ElectricPotential.FromVolts(5), ElectricPotential.FromVolts(60));
        var draw = new ComponentDraw(Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.4)), infrared: Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.6)));
        var camera = new SiteDevice("camera 1", new Device("camera", DeviceKind.Camera, draw, dcInput: any, acInput: any), "1");
        ShieldAssessment shield = new Site("returns", isNightFirst ? [.. conditions.Reverse()] : conditions, [ReturnSites.Box("a", 24, kind: kind)], [ReturnSites.Run("a", 1, "1", 1.0)], [camera],
            [ReturnSites.Link(1, "g", 0.9)], [ReturnSites.Bond("g", "a", 0.1)]).Assess().Shields[0];
        Assert.Equal("night", shield.Worst.Condition.Name);
        Assert.Equal(0.3, kind == CurrentKind.Dc ? shield.Worst.DcShift.Volts : shield.Worst.MainsFrequencyVoltage!.Value.Volts, 1e-9);
    }
}
