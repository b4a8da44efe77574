using System.Linq;
using UnitsNet;
using static CamPower.Tests.Assessment.Returns.ReturnSites;

namespace CamPower.Tests.Checks;

/// <summary>Hum on a video shield: fired just above its limit, not just below it, and never by guess.</summary>
public class GroundLoopHumTests
{
    // By hand: a third of 1 A along 0.9 Ω is 0.3 V; 3.4 % of it is 10.2 mV, and 3.3 % is 9.9 mV.
    [Fact]
    public void ShieldAboveTheLimit_IsFound_AndJustBelowIsNot()
    {
        Finding finding = Assert.Single(Rules.GroundLoopHum().Check(new Evidence(Site(3.4).Assess())));
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal("camera 1", finding.About.Name);
        Assert.Equal("day", finding.Condition!.Name);
        Assert.Equal(10.2, ((ElectricPotential)finding.Measured!).Millivolts, 1e-9);
        Assert.Equal(10, ((ElectricPotential)finding.Limit!).Millivolts, 1e-9);
        Assert.Contains("10.2 mV", finding.Message, System.StringComparison.Ordinal);
        Assert.Empty(Rules.GroundLoopHum().Check(new Evidence(Site(3.3).Assess())));
    }

    // The clamp removes a DC shift, however large, and of a ripple that nobody declares nothing is known.
    [Fact]
    public void DcShiftAlone_IsNotHum()
    {
        Assert.Empty(Rules.GroundLoopHum().Check(new Evidence(Site(0).Assess())));
        Assert.Empty(Rules.GroundLoopHum().Check(new Evidence(Site(null).Assess())));
    }

    // Two boxes that share a ground and one that shares nothing: the two whose ripple drives current through shields, and no other, once for the site.
    [Fact]
    public void ShieldWithoutRipple_IsSaidToBeUnknown_OnceForTheSite()
    {
        var site = Of([Box("a", 12), Box("b", 24, ripplePercent: 1), Box("c", 12), Box("d", 12)],
            [Run("a", 1, "1", 1.0), Run("b", 1, "2", 2.0), Run("c", 1, "3", 1.0), Run("d", 1, "4", 1.0)], [Amperes(1, 1), Amperes(2, 1), Amperes(3, 1), Amperes(4, 1)],
            [Link(1, "g", 0.9), Link(2, "g", 0.9), Link(3, "g", 0.9)], [Bond("g", "a", 0.1)]);
        Finding finding = Assert.Single(RuleSet.Standard.Check(site.Assess()), f => f.Rule == "ground-loop-hum-unknown");
        Assert.Equal("The ground-loop hum on 3 video shields is unknown. Not in the site file: ripple of a, c.", finding.Message);
        Assert.True(finding.IsNotStated);
        Assert.DoesNotContain(RuleSet.Standard.Check(Site(0).Assess()), f => f.IsNotStated && f.Rule != "faults-unknown");
    }

    [Fact]
    public void LimitOfOnesOwn_Binds()
    {
        Assert.Empty(Rules.GroundLoopHum(ElectricPotential.FromMillivolts(11)).Check(new Evidence(Site(3.4).Assess())));
        Assert.Single(Rules.GroundLoopHum(ElectricPotential.FromMillivolts(9)).Check(new Evidence(Site(3.3).Assess())));
        Assert.Throws<System.ArgumentOutOfRangeException>(() => Rules.GroundLoopHum(ElectricPotential.Zero));
    }

    // 1 A by night and 0.5 A by day: the worst condition is named.
    [Fact]
    public void WorstCondition_IsNamed()
    {
        Load half = Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.5));
        var any = new VoltageRange(ElectricPotential.FromVolts(5), ElectricPotential.FromVolts(60));
        var camera = new Device("camera", DeviceKind.Camera, new ComponentDraw(half, infrared: half), dcInput: any);
        var site = new Site("shed", [Condition.Day(Mild), Condition.Night(Mild)], [Box("a", 12, ripplePercent: 3.4)], [Run("a", 1, "1", 1.0)],
            [new SiteDevice("camera 1", camera, at: "1")], [Link(1, "g", 0.9)], [Bond("g", "a", 0.1)]);
        Assert.Equal("night", Rules.GroundLoopHum().Check(new Evidence(site.Assess())).Single().Condition!.Name);
    }

    private static Site Site(double? ripplePercent) =>
        Of([Box("a", 12, ripplePercent)], [Run("a", 1, "1", 1.0)], [Amperes(1, 1)], [Link(1, "g", 0.9)], [Bond("g", "a", 0.1)]);
}
