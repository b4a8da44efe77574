using System.Linq;
using CamPower.Studies;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>Every limit exactly at it, a hair inside and a hair outside: all who read the fact say the same.</summary>
/// <remarks>A hair is a millionth of a volt or an ampere, far above rounding and far below what anybody measures.</remarks>
public class LimitsThroughAllReadersTests
{
    private const double Hair = 1e-6;

    private static readonly SizingPolicy Whole = new(spareOutputs: Ratio.Zero, loading: Ratio.FromPercent(100)), Loaded = new(spareOutputs: Ratio.Zero, loading: Ratio.FromPercent(80));

    private static readonly CableRun Short = Runs.OfOhms(0);

    // How far outside its limit the value is, and whether it keeps it.
    public static TheoryData<double, bool> Outside => new() { { -Hair, true }, { 0, true }, { Hair, false } };

    // 12 V and 10 % are 13.2 V, that nothing takes off: the highest that the device accepts.
    [Theory]
    [MemberData(nameof(Outside))]
    public void HighestVoltage(double outside, bool keeps) => AssertVoltage(Range(9, 13.2 - outside), "overvoltage-at-light-load", keeps);

    // 12 V less 10 % are 10.8 V: the lowest that the device accepts.
    [Theory]
    [MemberData(nameof(Outside))]
    public void LowestVoltage(double outside, bool keeps) => AssertVoltage(Range(10.8 + outside, 15), "undervoltage", keeps);

    // Both at once: the only set point is 12 V.
    [Fact]
    public void BothVoltages_LeaveOneSetPoint()
    {
        TrimWindow window = Site(Range(10.8, 13.2)).TrimWindowOf(BoxName);
        Assert.False(window.IsEmpty);
        Assert.Equal(12, window.Middle.Volts, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Outside))]
    public void LimitOfAnOutput(double outside, bool keeps)
    {
        DistributionBox box = Box(limit: 1 - outside);
        Site site = Star(box, [Condition.Day(At())], (0, Camera(Amperes(1))));
        Assert.Equal(keeps, IsSilent(site, "output-overloaded"));
        Assert.Equal(keeps, site.SmallestBoxFor(BoxName, [box], Whole).Chosen is not null);
    }

    // A resettable fuse of 1.10 A holds 0.77 A at 50 °C (0.70 of it): the output, its study of faults, the rule and the sizing read one verdict.
    [Theory]
    [MemberData(nameof(Outside))]
    public void HoldOfAResettableFuse(double outside, bool keeps)
    {
        DistributionBox box = Box(protection: ResettableFuse.Generic16Volt[1]);
        Site site = Star(box, [Condition.Day(At(box: 50))], (0, Camera(Amperes(0.77 + outside))));
        SiteAssessment solved = site.Assess();
        ProtectionInCondition protection = solved.StudyFaults()[0].InConditions[0];
        Assert.Equal(solved.Boxes[0].Outputs[0].Worst.OfProtection, protection.Load);
        Assert.Equal(keeps ? Verdict.ThinMargin : Verdict.Violated, protection.Load.Verdict);
        Assert.Equal(!keeps, protection.MayTrip);
        Assert.Equal(keeps ? Severity.Caution : Severity.Failure, WithoutFaultsUnknown.Check(solved).Single(f => f.Rule == "nuisance-trip").Severity);
        Assert.Equal(keeps, site.SmallestBoxFor(BoxName, [box], Whole).Chosen is not null);
    }

    // In a box of which no efficiency is stated the air is at least as warm as around it: what trips there trips for certain.
    [Theory]
    [InlineData(0.77, Verdict.ThinMargin)]
    [InlineData(0.7, Verdict.Unknown)]
    [InlineData(0.78, Verdict.Violated)]
    public void ADeviceInAirThatIsNotKnown_IsUnknownUntilItIsBroken(double amperes, Verdict verdict)
    {
        var enclosure = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        SiteAssessment solved = Star(Box(protection: ResettableFuse.Generic16Volt[1]).WithEnclosure(enclosure), [Condition.Day(At(box: 50))], (0, Camera(Amperes(amperes)))).Assess();
        Assert.Equal(verdict, solved.Boxes[0].Outputs[0].Worst.OfProtection.Verdict);
        Assert.Equal(verdict, solved.StudyFaults()[0].InConditions[0].Load.Verdict);
        Assert.Equal(verdict == Verdict.Violated, WithoutFaultsUnknown.Check(solved).Any(f => f.Rule == "nuisance-trip" && f.Severity == Severity.Failure));
    }

    // A supply of 12.5 A gives 9.375 A at 60 °C by the generic curve (common practice, no source).
    [Theory]
    [MemberData(nameof(Outside))]
    public void DeratedRating(double outside, bool keeps) => AssertRating(9.375 + outside, 12.5, 60, Whole, "supply-above-derated-rating", keeps);

    // 80 % of 10 A (common practice, no source).
    [Theory]
    [MemberData(nameof(Outside))]
    public void Headroom(double outside, bool keeps) => AssertRating(8 + outside, 10, 25, Loaded, "supply-above-headroom-policy", keeps);

    private static void AssertVoltage(VoltageRange accepted, string rule, bool keeps)
    {
        Site site = Site(accepted);
        SupplyLayout adapters = site.LayoutWithAdapters(BoxName, [Trimmable()], Short, Whole);
        Assert.Equal(keeps, IsSilent(site, rule));
        Assert.Equal(keeps, site.TrimWindowOf(BoxName).Contains(Volts(12)));
        Assert.Equal(keeps ? (1, 1) : (0, 0), (site.LayoutOf(BoxName).DevicesInWindow, adapters.DevicesInWindow));
    }

    private static void AssertRating(double amperes, double rated, double celsius, SizingPolicy policy, string rule, bool keeps)
    {
        DistributionBox box = Box(Dc(amperes: rated));
        Site site = Star(box, [Condition.Day(At(box: celsius))], (0, Camera(Amperes(amperes))));
        Assert.Equal(keeps, IsSilent(site, rule));
        Assert.Equal(keeps, site.SmallestBoxFor(BoxName, [box], policy).Chosen is not null);
        Assert.Equal(keeps ? rated : 1000, Adapter(site, rated, policy).Box.Supply.Output.RatedCurrent.Amperes);
    }

    // The weaker adapter where it will do, else the one of 1000 A.
    private static BoxAssessment Adapter(Site site, double rated, SizingPolicy policy) =>
        Assert.Single(site.LayoutWithAdapters(BoxName, [Dc(amperes: rated), Dc(amperes: 1000)], Short, policy).Supplies);

    private static Site Site(VoltageRange accepted) => Star(Box(Trimmable()), [Condition.Day(At())], (0, Camera(Amperes(0.5), accepted)));

    private static Supply Trimmable() => new("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(100), Ratio.FromPercent(10), Range(9, 16)), Derating.GenericEnclosed);

    private static bool IsSilent(Site site, string rule) => WithoutFaultsUnknown.Check(site.Assess()).All(f => f.Rule != rule);
}
