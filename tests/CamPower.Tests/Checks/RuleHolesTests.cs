using System;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>Numbers and places of findings that one wrong sign would change unseen.</summary>
public class RuleHolesTests
{
    // A pigtail of copper at either end does not make the run one of copper.
    [Theory]
    [InlineData(false, false, false)]
    [InlineData(true, false, true)]
    [InlineData(false, true, true)]
    public void OneCladPieceOfTwo_IsEnough(bool isFirstClad, bool isSecondClad, bool isFound)
    {
        static CableSegment Of(bool isClad) => new(Cable.Pair(WireSize.Awg(18), Stranding.Solid,
            isClad ? ConductorMaterial.CopperCladAluminum15 : ConductorMaterial.AnnealedCopper), Length.FromMeters(3));
        var run = new CableRun(Of(isFirstClad), Of(isSecondClad));
        var site = new Site("site", [Condition.Day(At())], [Box()], [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run)],
            [new SiteDevice("camera", Camera(Amperes(0.2)), "end")]);
        Assert.Equal(isFound, RuleSet.Standard.Check(site.Assess()).Any(f => f.Rule == "copper-clad-aluminum"));
    }

    // 80 % of 10 A are 8 A (common practice): 8.5 A are above them, 7.9 A are not.
    [Fact]
    public void Headroom_IsHeldAgainstItsShareOfTheRating()
    {
        Finding found = Assert.Single(Of(8.5), f => f.Rule == "supply-above-headroom-policy");
        Assert.Equal((8.5, 8.0), (Math.Round(InAmperes(found.Measured), 9), Math.Round(InAmperes(found.Limit), 9)));
        Assert.DoesNotContain(Of(7.9), f => f.Rule == "supply-above-headroom-policy");

        static Finding[] Of(double amperes) =>
            [.. RuleSet.Standard.Check(Star(Box(Dc(amperes: 10)), [Condition.Day(At())], (0, Camera(Amperes(amperes)))).Assess())];
        static double InAmperes(IQuantity? current) => ((ElectricCurrent)current!).Amperes;
    }

    // 12 V unloaded, and a turn-on voltage of 12.1 V.
    [Fact]
    public void ADeviceThatNeverTurnsOn_IsToldItsUnloadedVoltage()
    {
        Finding found = Assert.Single(RuleSet.Standard.Check(Single(1, Camera(Watts(9), Range(9, 15), Starts(12.1, 8))).Assess()),
            f => f.Rule == "unloaded-voltage-below-turn-on");
        Assert.Equal((12.0, 12.1), (((ElectricPotential)found.Measured!).Volts, ((ElectricPotential)found.Limit!).Volts));
        Assert.Contains("It gets 12 V before it draws current", found.Message, StringComparison.Ordinal);
    }

    // 100 W through 2 Ω from 12 V, which carry at most 144/8 = 18 W: no voltage settles, and none is told.
    [Fact]
    public void ADeviceWithoutABalance_HasNoVoltageToTell()
    {
        SiteAssessment assessment = Single(2, Camera(Watts(100), Wide, Starts(9, 8))).Assess();
        Finding found = Assert.Single(Rules.SettlesBelowDropOut.Check(new Evidence(assessment)));
        Assert.Null(found.Measured);
        Assert.Equal(8, ((ElectricPotential)found.Limit!).Volts);
    }

    // Three wires of 14 AWG, 2.081 mm² each (ASTM B258: 64.1 mil), need 6.243 mm² of a terminal that takes up to 12 AWG, 3.309 mm².
    [Fact]
    public void WiresInParallel_FillATerminalTogether()
    {
        Conductor three = new Conductor(WireSize.Awg(14), Stranding.Solid, ConductorMaterial.AnnealedCopper).InParallel(3);
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(), 1, ElectricCurrent.FromAmperes(5),
            terminals: new TerminalRange(WireSize.Awg(24), WireSize.Awg(12)));
        var run = new CableRun(new Cable(three, three, isPreTerminated: false, "three pairs"), Length.FromMeters(3));
        var site = new Site("site", [Condition.Day(At())], [box], [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run)],
            [new SiteDevice("camera", Camera(Amperes(0.2)), "end")]);
        Finding found = Assert.Single(Rules.TerminalWrongSize.Check(new Evidence(site.Assess())));
        Assert.Equal(6.243, ((Area)found.Measured!).SquareMillimeters, 0.002);
        Assert.Equal(3.309, ((Area)found.Limit!).SquareMillimeters, 0.002);
    }

    // The characters at the ends of what is allowed, and their neighbors.
    [Fact]
    public void AnIdentifier_MayHaveLowercaseLettersDigitsAndHyphens()
    {
        Assert.Equal("a-z-0-9", new NamedRule("a-z-0-9").Id);
        foreach (char other in "`{/:A_é ")
        {
            Assert.Throws<ArgumentException>("id", () => new NamedRule($"a{other}b"));
        }
    }
}
