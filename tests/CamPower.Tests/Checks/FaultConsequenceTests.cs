using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Devices;
using CamPower.Tests.Faults;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>What a fault does decides how severe it is, and what its remedy says ends it. Copper of 18 AWG under PVC in a cable, 12 V behind 0.1 Ω.</summary>
public class FaultConsequenceTests
{
    private const string Lasting = "far-end-short-does-not-clear", Rail = "short-drags-rail-down", Above = "protection-above-conductor-rating", LetThrough = "conductor-cannot-stand-let-through";

    private static readonly Condition Day = Condition.Day(At(cable: 30, box: 20));

    // A fuse F of 2 A carries 1.25 A continuously, one of 6 A need not open at 9 A. A poor short at the terminals takes I·(12 V − I·0.1 Ω) of a supply that holds I: 14.8 W, 15.4 W,
    // 99.9 W, 100.9 W, against the 15 W and 100 W of the power sources PS1 and PS2 (IEC 62368-1, from memory). 18 AWG carries any of them continuously.
    [Theory]
    [InlineData(2, 1.25, Severity.Note)]
    [InlineData(2, 1.3, Severity.Caution)]
    [InlineData(6, 9.0, Severity.Caution)]
    [InlineData(6, 9.1, Severity.Failure)]
    public void AShortThatLasts_IsAsSevereAsAPoorOneIsHot(double rated, double limit, Severity severity)
    {
        Finding finding = Assert.Single(Found(Site(Holding(limit), SmallFault.QuickActing(rated)), Lasting));
        Assert.Equal(severity, finding.Severity);
        double watts = limit * (12 - (0.1 * limit));
        Assert.Equal(watts, (double)((Power)finding.Measured!).Watts, 1e-9 * watts);
        Assert.Equal(severity == Severity.Failure ? 100 : 15, (double)((Power)finding.Limit!).Watts);
    }

    // Without a limit it is V²/4R: 12 V behind 0.1 Ω and 5.9 Ω are 6 W, behind the 0.1 Ω of its terminals 360 W: the short that lasts is the far one, and the one that counts.
    [Fact]
    public void ThePowerIsThatOfThePlaceWhereTheShortLasts()
    {
        Site site = Site(OverloadBehaviour.Unlimited, SmallFault.QuickActing(1.5), new Joint("rest", ElectricResistance.FromOhms(5.9)));
        Finding finding = Assert.Single(Found(site, Lasting));
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(144 / 4 / (6 + (2 * OhmsPerMeter)), (double)((Power)finding.Measured!).Watts, 1e-3);
    }

    // 14 A for ever leave 18 AWG at 90 °C, hotter than PVC may be in service (70 °C): a Failure, though nothing burns.
    [Fact]
    public void HotterThanInService_IsAFailure() => Assert.Equal(Severity.Failure, Assert.Single(Found(Site(Holding(13), SmallFault.QuickActing(10)), Lasting)).Severity);

    // Two cameras behind one fuse that never opens: the other one is dark with it, 15 W or not.
    [Fact]
    public void OthersBehindTheSameDevice_AreACaution() => Assert.Equal(Severity.Caution,
        Assert.Single(Found(Site(Holding(1.2), SmallFault.QuickActing(2), devices: 2), Lasting)).Severity);

    // Other outputs are dark while a fuse F of 2 A opens 9 A, 4.5 times: a Caution. One of 5 A need not open: a Failure.
    [Theory]
    [InlineData(2, Severity.Caution)]
    [InlineData(5, Severity.Failure)]
    public void OthersInTheDark_AreAsSevereAsItIsLong(double rated, Severity severity)
    {
        Finding finding = Assert.Single(Found(Two(SmallFault.QuickActing(rated)), Rail));
        Assert.Equal(severity, finding.Severity);
        Assert.Empty(Found(Two(ElectronicLimitTests.Limit(amperes: 2)), Rail));
    }

    // What the remedy says, done: an electronic limit that is certain to open below the current that it names.
    [Theory]
    [InlineData(2, 1.25)]
    [InlineData(6, 9.1)]
    public void TheRemedyOfALastingShort_EndsIt(double rated, double limit)
    {
        Finding finding = Assert.Single(Found(Site(Holding(limit), SmallFault.QuickActing(rated)), Lasting));
        double below = double.Parse(finding.Remedy.Split(["open below ", " A,"], StringSplitOptions.None)[1], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(below, limit - 0.01, limit);
        Assert.Empty(Found(Site(Holding(limit), ElectronicLimitTests.Limit(amperes: below / 1.1)), Lasting));
    }

    // A fuse of 7 A (UL 248-14) lets 120 s × 14² = 23 520 A²s through; 18 AWG withstands 8959 A²s, and 28 A heat it beyond 160 °C in the 30 s.
    // What the remedy says, done: 14 AWG of (115 × 2.08)² = 57 300 A²s, or a fuse F of 5 A.
    [Fact]
    public void TheRemedyOfTooMuchLetThrough_EndsIt()
    {
        Fuse slow = SmallDevices.Fuse(FuseCharacteristic.UlFast, 7);
        Finding finding = Assert.Single(Found(Site(Holding(28), slow), LetThrough));
        Assert.Equal(Severity.Danger, finding.Severity);
        Assert.Contains("withstand 2.35E+04 A²·s", finding.Remedy, StringComparison.Ordinal);
        Assert.Empty(Found(Site(Holding(28), slow, gauge: 14), LetThrough));
        Assert.Empty(Found(Site(Holding(28), SmallFault.QuickActing(5)), LetThrough));
    }

    // IEC 60364-4-43, 436: a supply that keeps up no more than the conductor carries protects it, whatever the fuse. 7 A of the largest device on 18 AWG (NEC 725.43).
    // A nameplate of 100 A or none at all proves nothing, and outputs that are tied together have more than one source.
    [Theory]
    [InlineData(7.0, false, 0)]
    [InlineData(7.1, false, 1)]
    [InlineData(null, false, 1)]
    [InlineData(7.0, true, 1)]
    public void ASourceThatCannotExceedTheConductor_ProtectsIt(double? limit, bool isTied, int found) =>
        Assert.Equal(found, Found(Site(limit is double amperes ? Holding(amperes) : null, SmallDevices.Fuse(FuseCharacteristic.UlFast, 10), isTied: isTied), Above).Count);

    // Winter: air of 5 °C in the box, a resettable fuse of 1.10 A trips from 2.2 A × 1.135 = 2.50 A on, and 12 V behind 0.24 Ω and 65 m of 0.5 mm² at -10 °C are 2.86 A at the least, 2.92 A where the fuse is new. Summer: 1.76 A in 40 °C,
    // and 2.2 A through the cable at 60 °C. Each clears; winter's box with summer's cable would not.
    [Fact]
    public void SeasonsDoNotMix()
    {
        Condition summer = Condition.Day(At(cable: 60, box: 40)), winter = Condition.Night(At(cable: -10, box: 5));
        ShortCircuit far = Long(summer, winter);
        Assert.Equal(ClearingVerdict.Clears, far.Verdict);
        Assert.Equal((ClearingVerdict.Clears, ClearingVerdict.Clears), (Long(summer).Verdict, Long(winter).Verdict));
        Assert.Equal(ClearingVerdict.MayClear, Long(summer, Condition.Night(At(cable: 60, box: 5))).Verdict);
        Assert.Equal(2.924, far.LargestProspective!.Value.Amperes, 0.002);
        Assert.Equal(2.2, far.SmallestProspective!.Value.Amperes, 0.01);

        static ShortCircuit Long(params Condition[] conditions) => new Site("site", conditions, [SmallFaultSite.Box(SmallDevices.Generic(1.10), OverloadBehaviour.Unlimited)],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "end", SmallFault.Run(65), laying: Laying.InCableOrRaceway(2))],
            [new SiteDevice("camera", Camera(Amperes(0.1)), "end")]).Assess().StudyFaults().Outputs[0].Weakest.Fault;
    }

    // NBS Handbook 100: 18 AWG is 6.385 Ω/1000 ft at 20 °C.
    private const double OhmsPerMeter = 6.385 / 304.8 * (1 + (0.00393 * 10));

    private static OverloadBehaviour Holding(double amperes) => OverloadBehaviour.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));

    private static IReadOnlyList<Finding> Found(Site site, string rule) => [.. RuleSet.Standard.Check(site.Assess()).Where(f => f.Rule == rule)];

    private static Site Site(OverloadBehaviour? overload, ProtectiveDevice device, Joint? rest = null, int devices = 1, int gauge = 18, bool isTied = false) => new("site", [Day], [Box(overload, device)],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", Cabled(gauge, rest), laying: Laying.InCableOrRaceway(2))],
        [.. Enumerable.Range(1, devices).Select(n => new SiteDevice($"camera {n}", Camera(Amperes(0.1), starting: Starts(9, 8)), "end"))],
        ties: isTied ? [new OutputTie(BoxName, 1, BoxName, 2)] : null);

    private static Site Two(ProtectiveDevice device) => new("site", [Day], [Box(Holding(9), device)],
        [.. new[] { 1, 2 }.Select(n => new SiteRun(RunOrigin.Output(BoxName, n), $"end {n}", Cabled(18, rest: null), laying: Laying.InCableOrRaceway(2)))],
        [.. new[] { 1, 2 }.Select(n => new SiteDevice($"camera {n}", Camera(Amperes(0.1), starting: Starts(9, 8)), $"end {n}"))]);

    private static DistributionBox Box(OverloadBehaviour? overload, ProtectiveDevice device) => DistributionBox.WithEqualOutputs(BoxName,
        new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(100), Ratio.Zero, sourceResistance: ElectricResistance.FromOhms(0.1), overload: overload), Derating.GenericEnclosed),
        2, ElectricCurrent.FromAmperes(50), device);

    private static CableRun Cabled(int gauge, Joint? rest)
    {
        var run = new CableRun(Cable.Pair(WireSize.Awg(gauge), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70), Length.FromMeters(1));
        return rest is null ? run : run.Then(rest);
    }
}
