using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>Whether what is said of conductors follows their current, their insulation, their installation method and what protects them.</summary>
public class ConductorRuleTests
{
    private static readonly Cable Thin = Cable.Pair(WireSize.Awg(24), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    // By hand: 24 AWG carries 14·0.49875^1.5 = 4.931 A at 90 °C in 30 °C; at 60 °C in 40 °C √(20/60·1.27510/1.15720) of it: 2.988 A.
    [Theory]
    [InlineData(2.98, false)]
    [InlineData(3.00, true)]
    public void ThinWire_OfUndeclaredInsulation_CountsAs60Degrees(double amperes, bool isFound)
    {
        IReadOnlyList<Finding> found = Over(OnRun(Thin, amperes));
        Assert.Equal(isFound, found.Count > 0);
        if (isFound) Assert.Contains("insulation 60 °C (assumed), estimated from a larger size", found[0].Message, System.StringComparison.Ordinal);
    }

    // 90 °C of insulation: √(50/60) of 4.931 A is 4.501 A.
    [Theory]
    [InlineData(4.49, false)]
    [InlineData(4.52, true)]
    public void BetterInsulation_CarriesMore(double amperes, bool isFound) =>
        Assert.Equal(isFound, Over(OnRun(Cable.Pair(WireSize.Awg(24), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.CrossLinked), amperes)).Count > 0);

    // NEC Table 310.16, 60 °C column, and 240.4(D), from memory: 15, 20 and 30 A of 14, 12 and 10 AWG, whatever a model or a warmer insulation would allow.
    [Theory]
    [InlineData("14 AWG", 15)]
    [InlineData("12 AWG", 20)]
    [InlineData("10 AWG", 30)]
    public void ThickerWires_AreHeldToTheCode(string size, double amperes)
    {
        Cable cable = Cable.Pair(WireSize.Awg(int.Parse(size.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Rated(Temperature.FromDegreesCelsius(90)));
        Assert.Empty(Over(OnRun(cable, amperes)));
        Finding finding = Assert.Single(Over(OnRun(cable, amperes + 0.01)));
        Assert.Equal(amperes, ((ElectricCurrent)finding.Limit!).Amperes);
    }

    // IEC 60364-5-52 Table B.52.2, from memory: 1.5 mm² of PVC carries 14 A by method A2, 16.5 A by B2 and 19.5 A by C in 30 °C, √(30/40) of it in 40 °C
    // (Table B.52.14: 0.87), and 0.7 of it in a bunch of three circuits. The 8 A of 16 AWG are another code's.
    [Theory]
    [InlineData(null, 10, null)]
    [InlineData(null, 12.1, null)]
    [InlineData(null, 12.2, Severity.Note)]
    [InlineData(null, 16.8, Severity.Note)]
    [InlineData(null, 16.9, Severity.Danger)]
    [InlineData("A2", 12.1, null)]
    [InlineData("A2", 12.2, Severity.Danger)]
    [InlineData("B2", 14.2, null)]
    [InlineData("B2", 14.3, Severity.Danger)]
    [InlineData("C", 16.8, null)]
    [InlineData("C", 16.9, Severity.Danger)]
    [InlineData("C, 3", 11.8, null)]
    [InlineData("C, 3", 11.9, Severity.Danger)]
    public void MetricCables_GoByTheirOwnTableAndInstallationMethod(string? method, double amperes, Severity? expected)
    {
        InstallationMethod? installationMethod = method switch
        {
            "A2" => InstallationMethod.InInsulatedWall(),
            "B2" => InstallationMethod.InConduitOnWall(),
            "C" => InstallationMethod.OnWall(),
            "C, 3" => InstallationMethod.OnWall(circuits: 3),
            _ => null,
        };
        Cable metric = Cable.Pair(WireSize.SquareMillimeters(1.5), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70);
        Assert.Equal(expected, Over(OnRun(metric, amperes, installationMethod)).SingleOrDefault()?.Severity);
    }

    // NEC 310.15(C)(1), from memory: 7 to 9 current-carrying conductors carry 70 %. Four joined pairs are eight in one jacket, whatever count is stated.
    // 24 AWG by the estimate: 14 A·(0.511/1.024)^1.5 = 4.933 A at 90 °C in 30 °C; four of them at 75 °C in 45 °C and 70 %: 4·0.7·4.933·√(30/60)·√(r(90)/r(75)) = 10.0 A.
    [Theory]
    [InlineData(null, 9.8, false)]
    [InlineData(null, 10.3, true)]
    [InlineData(2, 10.3, true)]
    [InlineData(8, 9.8, false)]
    public void JoinedPairs_CountAllTheirWires(int? stated, double amperes, bool isFound)
    {
        Conductor four = new Conductor(WireSize.Awg(24), Stranding.Solid, ConductorMaterial.AnnealedCopper).InParallel(4);
        var ganged = new Cable(four, four, insulation: Insulation.Rated(Temperature.FromDegreesCelsius(75)));
        InstallationMethod? method = stated is int count ? InstallationMethod.InCableOrRaceway(count) : null;
        Assert.Equal(isFound, Over(OnRun(ganged, amperes, method, air: 45)).Any(f => f.Severity == Severity.Danger));
    }

    // Cables of the trade are for 60 °C to 90 °C (common practice, no source). In 62 °C a cable of 60 °C carries nothing, one of 90 °C more than is asked for.
    [Theory]
    [InlineData(62, 0.34, Severity.Note)]
    [InlineData(62, 12, Severity.Danger)]
    [InlineData(30, 0.34, null)]
    public void InsulationThatIsNotStated_IsADangerOnlyWhereNoUsualOneWillDo(double air, double amperes, Severity? expected)
    {
        Cable pair = Cable.Pair(WireSize.Awg(18), Stranding.ClassB, ConductorMaterial.AnnealedCopper);
        Assert.Equal(expected, Over(OnRun(pair, amperes, null, air)).SingleOrDefault()?.Severity);
    }

    // 18 AWG may carry 5.6 A continuously by the US code; behind a Class 2 output its ampacity, 8.485 A·√(15/20) in 45 °C, is the limit. A claim that the numbers refute spares it
    // nothing: 12 V x 10 A on the nameplate are more than 5 x 12 = 60 VA (NEC Chapter 9, Table 11(B), from memory).
    [Theory]
    [InlineData(null, 5.59, false)]
    [InlineData(null, 5.61, true)]
    [InlineData(PowerLimitClass.LimitedPowerSource, 5.61, true)]
    [InlineData(PowerLimitClass.Class2, 7.34, false)]
    [InlineData(PowerLimitClass.Class2, 7.36, true)]
    [InlineData(PowerLimitClass.Class2, 5.61, true, 10.0)]
    public void TheCapOfSmallConductors_DoesNotBindClass2Circuits(PowerLimitClass? claimed, double amperes, bool isFound, double ratedAmperes = 5)
    {
        Cable cable = Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper);
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(ratedAmperes), Ratio.Zero, overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(8)));
        var box = new DistributionBox(BoxName, new Supply("supply", output, Derating.GenericEnclosed), [new BoxOutput(1, ElectricCurrent.FromAmperes(50), claimedClass: claimed)]);
        var site = new Site("site", [Condition.Day(At(45))], [box], [new SiteRun(RunOrigin.Output(BoxName, 1), "end", Run(cable))],
            [new SiteDevice("camera 1", Camera(Amperes(amperes)), "end")]);
        Assert.Equal(isFound, Over(site).Count > 0);
    }

    // NEC 310.15(C)(1): half of it among 10 to 20 conductors that carry current.
    [Theory]
    [InlineData(1.49, false)]
    [InlineData(1.51, true)]
    public void BundledCable_CarriesLess(double amperes, bool isFound) => Assert.Equal(isFound, Over(OnRun(Thin, amperes, InstallationMethod.InCableOrRaceway(12))).Count > 0);

    // Two cameras of 2 A: each on a positive of its own, the negative of the one shared. That one negative carries 4 A.
    [Fact]
    public void SharedNegative_CarriesBothCurrents()
    {
        Site shared = Pair(returnAt: "one");
        Finding finding = Assert.Single(Over(shared));
        Assert.Equal("box output 1 to one", finding.About.Name);
        Assert.Equal(4, ((ElectricCurrent)finding.Measured!).Amperes, 1e-9);
        Assert.Empty(Over(Pair(returnAt: null)));
    }

    // The first run of a chain carries what both of its cameras draw.
    [Fact]
    public void FirstRunOfAChain_CarriesAll()
    {
        var site = new Site("site", [Condition.Day(At(40))], [Box()],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "one", Run(Thin)), new SiteRun(RunOrigin.Junction("one"), "two", Run(Thin))],
            [new SiteDevice("camera 1", Camera(Amperes(2)), "one"), new SiteDevice("camera 2", Camera(Amperes(2)), "two")]);
        Assert.Equal("box output 1 to one", Assert.Single(Over(site)).About.Name);
    }

    // Warmer than its insulation by the air alone, it carries nothing.
    [Fact]
    public void AirAsWarmAsTheInsulation_LeavesNothing()
    {
        Site site = new("site", [Condition.Day(At(60))], [Box()], [new SiteRun(RunOrigin.Output(BoxName, 1), "end", Run(Thin))], [new SiteDevice("camera 1", Camera(Amperes(0.1)), "end")]);
        Assert.Equal(0, ((ElectricCurrent)Assert.Single(Over(site)).Limit!).Amperes);
    }

    // Its insulation is not stated. A 2 A fuse on 2.988 A of wire of 60 °C is in order; of a 3 A one it is not known, for at 90 °C the wire carries 4.501 A.
    // A 3.15 A fuse opens for certain at 2.1 times that, above 1.45·4.501 A = 6.527 A. A resettable one counts by what it holds.
    [Fact]
    public void Protection_IsHeldToTheThinnestConductorBehindIt()
    {
        Assert.Empty(Protected(Fuse(2)));
        Finding assumed = Assert.Single(Protected(Fuse(3))), certain = Assert.Single(Protected(Fuse(3.15)));
        Assert.Equal((Severity.Note, Severity.Danger), (assumed.Severity, certain.Severity));
        Assert.Equal(2.988, ((ElectricCurrent)assumed.Limit!).Amperes, 0.001);
        Assert.Equal(6.527, ((ElectricCurrent)certain.Limit!).Amperes, 0.001);
        Assert.Contains("box output 1 to end", assumed.Message, System.StringComparison.Ordinal);
        Assert.Empty(Protected(ResettableFuse.Generic16Volt[0]));
        Assert.Empty(Protected(ProtectiveDevice.None));
        Assert.Empty(Protected(null));
    }

    // 1.45 times 2.988 A are 4.333 A (IEC 60364-4-43, 433.1, from memory): a fuse to IEC 60127 opens for certain at 2.1 times its rating, a resettable one at its trip current.
    [Theory]
    [InlineData(2.06, false)]
    [InlineData(2.07, true)]
    public void Protection_OpensAtNoMoreThan145PercentOfTheConductor(double rated, bool isFound)
    {
        IReadOnlyList<Finding> found = Protected(Fuse(rated));
        Assert.Equal(isFound, found.Count > 0);
        if (isFound) Assert.Equal(4.333, ((ElectricCurrent)found[0].Limit!).Amperes, 0.001);
        Assert.Empty(Protected(ResettableFuse.Generic16Volt.Single(f => f.TripCurrent.Amperes is > 3.6 and < 3.8)));
        Assert.Equal(5, ((ElectricCurrent)Assert.Single(Protected(ResettableFuse.Generic16Volt[^1])).Measured!).Amperes, 1e-9);
    }

    // A limit of 2.8 A may let 3.08 A pass for good where it is 10 % off, 2.94 A where it is 5 % off.
    [Theory]
    [InlineData(5, false)]
    [InlineData(10, true)]
    public void ElectronicLimit_CountsByTheMostThatItLetsPass(double percent, bool isFound) => Assert.Equal(isFound, Protected(new ElectronicLimit("limit",
        ElectricCurrent.FromAmperes(2.8), Ratio.FromPercent(percent), Duration.FromMilliseconds(50), ElectricResistance.Zero, Volts(30))).Count > 0);

    // 28 AWG carries 14·0.3137^1.5 = 2.460 A at 90 °C in 30 °C, and 1.490 A at 60 °C in 40 °C. 30 AWG carries less: what is too much for 28 AWG is too much for it.
    [Theory]
    [InlineData(1.48, false)]
    [InlineData(1.50, true)]
    public void AWireThinnerThanAnyKnown_IsHeldToTheThinnestKnown(double amperes, bool isFound)
    {
        Cable hair = Cable.Pair(WireSize.Awg(30), Stranding.Solid, ConductorMaterial.AnnealedCopper);
        IReadOnlyList<Finding> found = Over(OnRun(hair, amperes));
        Assert.Equal(isFound, found.Count > 0);
        if (isFound) Assert.Contains("as the smallest known size", found[0].Message, System.StringComparison.Ordinal);
        Assert.Equal(isFound, Over(OnRun(Cable.Pair(WireSize.Awg(28), Stranding.Solid, ConductorMaterial.AnnealedCopper), amperes)).Count > 0);
        Assert.Single(Protected(Fuse(2), hair));
        Assert.Empty(Over(OnRun(Cable.Pair(WireSize.Kcmil(250), Stranding.Solid, ConductorMaterial.AnnealedCopper), amperes)));
    }

    // No length of wire carries nothing: a hair of 0 m neither limits its own output nor a return that two outputs share.
    // Two fuses of 2 A carry 4 A together, and 24 AWG 2.988 A.
    [Fact]
    public void APieceOfNoLength_LimitsNothing()
    {
        CableSegment wire = new(Thin, Length.FromMeters(1)),
            hair = new(Cable.Pair(WireSize.Awg(30), Stranding.Solid, ConductorMaterial.AnnealedCopper), Length.Zero);
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(5), Fuse(2));
        var site = new Site("site", [Condition.Day(At(40))], [box],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "one", new CableRun(wire, hair)), new SiteRun(RunOrigin.Output(BoxName, 2), "two", new CableRun(wire), "one")],
            [new SiteDevice("camera 1", Camera(Amperes(0.1)), "one"), new SiteDevice("camera 2", Camera(Amperes(0.1)), "two")]);
        Finding finding = Assert.Single(Rules.ProtectionAboveConductorAmpacity.Check(new Evidence(site.Assess())));
        Assert.Equal(4, ((ElectricCurrent)finding.Measured!).Amperes, 1e-9);
        Assert.Equal(2.988, ((ElectricCurrent)finding.Limit!).Amperes, 0.001);
    }

    private static IReadOnlyList<Finding> Protected(ProtectiveDevice? device, Cable? thin = null)
    {
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(5), device);
        Cable thick = Cable.Pair(WireSize.Awg(14), Stranding.Solid, ConductorMaterial.AnnealedCopper);
        var site = new Site("site", [Condition.Day(At(20)), Condition.Night(At(40))], [box],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "end", new CableRun(new CableSegment(thick, Length.FromMeters(2)), new CableSegment(thin ?? Thin, Length.FromMeters(1))))],
            [new SiteDevice("camera 1", Camera(Amperes(0.1)), "end")]);
        return [.. Rules.ProtectionAboveConductorAmpacity.Check(new Evidence(site.Assess()))];
    }

    private static Fuse Fuse(double amperes) => new("fuse", ElectricCurrent.FromAmperes(amperes), FuseCharacteristic.IecQuickActing,
        Volts(250), ElectricCurrent.FromAmperes(35), ElectricResistance.Zero);

    private static Site Pair(string? returnAt) => new("site", [Condition.Day(At(40))], [Box()],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "one", Run(Thin)), new SiteRun(RunOrigin.Output(BoxName, 2), "two", Run(Thin), returnAt)],
        [new SiteDevice("camera 1", Camera(Amperes(2)), "one"), new SiteDevice("camera 2", Camera(Amperes(2)), "two")]);

    private static Site OnRun(Cable cable, double amperes, InstallationMethod? installationMethod = null, double air = 40) => new("site", [Condition.Day(At(air))], [Box()],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", Run(cable), installationMethod: installationMethod)], [new SiteDevice("camera 1", Camera(Amperes(amperes)), "end")]);

    private static CableRun Run(Cable cable) => new(cable, Length.FromMeters(1));

    private static IReadOnlyList<Finding> Over(Site site) => [.. Rules.ConductorOverAmpacity.Check(new Evidence(site.Assess()))];
}
