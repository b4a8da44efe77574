using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Faults;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>What a fault does decides how severe it is, and what its remedy says ends it. Copper of 18 AWG under PVC in a cable, 12 V behind 0.1 Ω.</summary>
public class FaultConsequenceTests
{
    private const string Lasting = "short-may-not-be-interrupted", Rail = "short-collapses-supply-voltage", Above = "protection-above-conductor-ampacity", LetThrough = "let-through-above-conductor-withstand";

    private static readonly Condition Day = Condition.Day(At(cable: 30, box: 20));

    // 24 V behind R: a dead short that a fuse need not open, and a poor one of 24²/4R at the most, against the 15 W and 100 W of the power sources PS1 and PS2 (IEC 62368-1, from memory).
    // 9.61 Ω are 2.5 A and 14.98 W, 1.45 Ω 16.6 A and 99.3 W, 1.43 Ω 16.8 A and 100.7 W; 12 AWG carries any of them continuously.
    [Theory]
    // An output that states that it has no protective device is never judged milder; what is harmless is not said of it.
    [InlineData(2.0, 9.61, Severity.Note)]
    [InlineData(2.0, 9.59, Severity.Caution)]
    [InlineData(10.0, 1.45, Severity.Caution)]
    [InlineData(10.0, 1.43, Severity.Failure)]
    [InlineData(null, 9.61, null)]
    [InlineData(null, 9.59, Severity.Caution)]
    [InlineData(null, 1.45, Severity.Caution)]
    [InlineData(null, 1.43, Severity.Failure)]
    public void AShortThatLasts_IsAsSevereAsAPoorOneIsHot(double? rated, double ohms, Severity? severity)
    {
        ProtectiveDevice device = rated is double amperes ? SmallFault.QuickActing(amperes) : ProtectiveDevice.None;
        Site site = Site(OverloadBehavior.Unlimited, device, gauge: 12, volts: 24, sourceOhms: ohms);
        Finding? finding = Found(site, Lasting).SingleOrDefault();
        Assert.Equal(severity, finding?.Severity);
        if (finding is not null) Assert.Equal(24 / ohms, ((ElectricCurrent)finding.Measured!).Amperes, 0.2);
        Assert.Equal(576 / 4 / ohms, (double)site.Assess().StudyFaults()[0].AtTerminals.PoorShortPower!.Value.Watts, 1e-9);
    }

    // It is the place of the short that counts: behind 0.1 Ω and 5.9 Ω 6 W. A supply or an electronic limit that holds less than V/2R leaves I·(V − I·R).
    [Fact]
    public void ThePowerOfAPoorShort_IsThatOfItsPlaceAndItsLimit()
    {
        Finding finding = Assert.Single(Found(Site(OverloadBehavior.Unlimited, SmallFault.QuickActing(1.5), new Joint("rest", ElectricResistance.FromOhms(5.9))), Lasting));
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("heats with up to 6 W", finding.Message, StringComparison.Ordinal);
        Assert.Equal(2.5 * (12 - 0.25), Power(Site(Holding(2.5), SmallFault.QuickActing(1.5))), 1e-9);
        Assert.Equal(1.65 * (12 - (1.65 * 0.14)), Power(Site(Holding(2.5), ElectronicLimitTests.Limit(amperes: 1.5))), 1e-9);
        // 2.1 times its rating opens an F fuse within 30 min (IEC 60127-2): what lasts is less.
        Assert.Equal(3.15 * (12 - (3.15 * 0.1)), Power(Site(OverloadBehavior.Unlimited, SmallFault.QuickActing(1.5))), 1e-9);

        static double Power(Site site) => (double)site.Assess().StudyFaults()[0].AtTerminals.PoorShortPower!.Value.Watts;
    }

    // IEC 60364-4-43, 436: 2.4 A or 9 A of a supply that 18 AWG carries continuously. The fuse need not open: a Note.
    [Theory]
    [InlineData(2, 2.4)]
    [InlineData(6, 9)]
    public void WhereTheSourceProtects_AFuseNeedNotOperate(double rated, double limit) =>
        Assert.Equal(Severity.Note, Assert.Single(Found(Site(Holding(limit), SmallFault.QuickActing(rated)), Lasting)).Severity);

    // 14 A for ever leave 18 AWG at 90 °C, hotter than PVC may be in service (70 °C): a Failure, though nothing burns.
    [Fact]
    public void HotterThanInService_IsAFailure() => Assert.Equal(Severity.Failure, Assert.Single(Found(Site(Holding(13), SmallFault.QuickActing(10)), Lasting)).Severity);

    // Two cameras behind one fuse that never opens: the other one is dark with it, 15 W or not.
    [Fact]
    public void OthersBehindTheSameDevice_AreACaution() => Assert.Equal(Severity.Caution,
        Assert.Single(Found(Site(Holding(1.2), SmallFault.QuickActing(2), devices: 2), Lasting)).Severity);

    // Other outputs are dark while a fuse F of 2 A opens 9 A, 4.5 times: a Caution. One of 4 A opens it, 2.25 times, within 1800·(2.1/2.25)² s, and one of 5 A need not: a Failure.
    [Theory]
    [InlineData(2, Severity.Caution)]
    [InlineData(4, Severity.Failure)]
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
        Finding finding = Assert.Single(Found(Site(Holding(limit), SmallFault.QuickActing(rated), devices: 2), Lasting));
        double below = double.Parse(finding.Remedy.Split(["open below ", " A."], StringSplitOptions.None)[1], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(below, limit - 0.01, limit);
        Assert.Empty(Found(Site(Holding(limit), ElectronicLimitTests.Limit(amperes: below / 1.1), devices: 2), Lasting));
    }

    // What does no harm asks for no work.
    [Fact]
    public void AHarmlessShort_HasNothingToDo() => Assert.StartsWith("Nothing needs to be done",
        Assert.Single(Found(Site(Holding(2.4), SmallFault.QuickActing(2)), Lasting)).Remedy, StringComparison.Ordinal);

    // Alike outputs of one cause are one finding with its list.
    [Fact]
    public void AlikeOutputs_AreOneFinding()
    {
        Finding finding = Assert.Single(Found(Two(SmallFault.QuickActing(5)), Lasting));
        Assert.Equal(BoxName, finding.About.Name);
        Assert.EndsWith(" The same at outputs 1-2.", finding.Message, StringComparison.Ordinal);
    }

    // A fuse of 7 A (UL 248-14) lets 120 s × 14² = 23 520 A²s through; 18 AWG withstands 8959 A²s, and 28 A heat it beyond 160 °C in the 30 s.
    // What the remedy says, done: 14 AWG of (115 × 2.08)² = 57 300 A²s, for 16 AWG of (115 × 1.31)² = 22 700 A²s is too small; or a fuse F of 5 A.
    [Fact]
    public void TheRemedyOfTooMuchLetThrough_EndsIt()
    {
        Fuse slow = SmallDevices.Fuse(FuseCharacteristic.UlFast, 7);
        Finding finding = Assert.Single(Found(Site(Holding(28), slow), LetThrough));
        Assert.Equal(Severity.Danger, finding.Severity);
        Assert.Contains("conductors of 14 AWG or larger", finding.Remedy, StringComparison.Ordinal);
        Assert.Empty(Found(Site(Holding(28), slow, gauge: 14), LetThrough));
        Assert.Empty(Found(Site(Holding(28), SmallFault.QuickActing(5)), LetThrough));
    }

    // Outputs without a protective device take the others down without end, as those behind a fuse that need not open.
    [Fact]
    public void OthersOfUnprotectedOutputs_AreAFailure()
    {
        Finding finding = Assert.Single(Found(Two(ProtectiveDevice.None), Rail));
        Assert.Equal(Severity.Failure, finding.Severity);
        Assert.Contains("There is no protective device; the short lasts until it is removed.", finding.Message, StringComparison.Ordinal);
    }

    // IEC 60364-4-43, 436: a supply that keeps up no more than the conductor carries protects it, whatever the fuse: 14 A at 90 °C in 30 °C (NEC Table 310.16) are
    // 14·√(40/60 · 1.2751/1.1965) = 11.8 A at 70 °C. A nameplate of 100 A, or no limit, proves nothing, and outputs that are tied together have more than one source.
    [Theory]
    [InlineData(11.7, false, 0)]
    [InlineData(11.9, false, 1)]
    [InlineData(null, false, 1)]
    [InlineData(11.7, true, 1)]
    public void ASourceThatCannotExceedTheConductor_ProtectsIt(double? limit, bool isTied, int found) =>
        Assert.Equal(found, Found(Site(limit is double amperes ? Holding(amperes) : null, SmallDevices.Fuse(FuseCharacteristic.UlFast, 12), isTied: isTied), Above).Count);

    // Winter: air of 5 °C in the box, a resettable fuse of 1.10 A trips from 2.2 A × 1.135 = 2.50 A on, and 12 V behind 0.24 Ω and 65 m of 0.5 mm² at -10 °C are 2.86 A at the least, 2.92 A where the fuse is new. Summer: 1.76 A in 40 °C,
    // and 2.2 A through the cable at 60 °C. Each clears; winter's box with summer's cable would not.
    [Fact]
    public void SeasonsDoNotMix()
    {
        Condition summer = Condition.Day(At(cable: 60, box: 40)), winter = Condition.Night(At(cable: -10, box: 5));
        ShortCircuit far = Long(summer, winter);
        Assert.Equal(OperatingVerdict.Operates, far.Verdict);
        Assert.Equal((OperatingVerdict.Operates, OperatingVerdict.Operates), (Long(summer).Verdict, Long(winter).Verdict));
        Assert.Equal(OperatingVerdict.MayOperate, Long(summer, Condition.Night(At(cable: 60, box: 5))).Verdict);
        Assert.Equal(2.924, far.LargestProspective!.Value.Amperes, 0.002);
        Assert.Equal(2.2, far.SmallestProspective!.Value.Amperes, 0.01);

        static ShortCircuit Long(params Condition[] conditions) => new Site("site", conditions, [SmallFaultSite.Box(SmallDevices.Printed(1.10), OverloadBehavior.Unlimited)],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "end", SmallFault.Run(65), installationMethod: InstallationMethod.InCableOrRaceway(2))],
            [new SiteDevice("camera", Camera(Amperes(0.1)), "end")]).Assess().StudyFaults()[0].Weakest;
    }

    private static OverloadBehavior Holding(double amperes) => OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));

    private static IReadOnlyList<Finding> Found(Site site, string rule) => [.. RuleSet.Standard.Check(site.Assess()).Where(f => f.Rule == rule)];

    private static Site Site(OverloadBehavior? overload, ProtectiveDevice device, Joint? rest = null, int devices = 1, int gauge = 18, bool isTied = false, double volts = 12,
        double sourceOhms = 0.1) => new("site", [Day], [Box(overload, device, volts, sourceOhms)],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", Cabled(gauge, rest), installationMethod: InstallationMethod.InCableOrRaceway(2))],
        [.. Enumerable.Range(1, devices).Select(n => new SiteDevice($"camera {n}", Camera(Amperes(0.1), starting: Starts(9, 8)), "end"))],
        ties: isTied ? [new OutputTie(BoxName, 1, BoxName, 2)] : null);

    private static Site Two(ProtectiveDevice device) => new("site", [Day], [Box(Holding(9), device)],
        [.. new[] { 1, 2 }.Select(n => new SiteRun(RunOrigin.Output(BoxName, n), $"end {n}", Cabled(18, rest: null), installationMethod: InstallationMethod.InCableOrRaceway(2)))],
        [.. new[] { 1, 2 }.Select(n => new SiteDevice($"camera {n}", Camera(Amperes(0.1), starting: Starts(9, 8)), $"end {n}"))]);

    private static DistributionBox Box(OverloadBehavior? overload, ProtectiveDevice device, double volts = 12, double sourceOhms = 0.1) => DistributionBox.OfEqualOutputs(BoxName,
        new Supply("supply", new DcOutput(Volts(volts), ElectricCurrent.FromAmperes(100), Ratio.Zero, sourceResistance: ElectricResistance.FromOhms(sourceOhms), overload: overload), Derating.GenericEnclosed),
        2, ElectricCurrent.FromAmperes(50), device);

    private static CableRun Cabled(int gauge, Joint? rest)
    {
        var run = new CableRun(Cable.Pair(WireSize.Awg(gauge), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70), Length.FromMeters(1));
        return rest is null ? run : run.Then(rest);
    }
}
