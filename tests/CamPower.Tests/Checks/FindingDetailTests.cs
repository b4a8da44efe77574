using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Sites;
using CamPower.Tests.Assessment.Returns;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using CamPower.Tests.Supplies;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>Which of several a finding names, by which measure, and the words that only an unusual site brings out. Numbers by hand.</summary>
public class FindingDetailTests
{
    private static readonly Condition Day = Condition.Day(At()), Night = Condition.Night(At());

    private static readonly Enclosure OnWall =
        new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);

    // 1.5 mm² of PVC in 20 °C: 14 A · √(50/40) = 15.65 A by method A2, 19.5 A · √(50/40) = 21.80 A by method C (IEC 60364-5-52, from memory).
    [Theory]
    [InlineData(17, "Basis: ampacity in 20 °C air, insulation 70 °C, installation method A2 (assumed).")]
    [InlineData(22, "Basis: ampacity in 20 °C air, insulation 70 °C, installation method C (assumed).")]
    public void AnAssumedMethod_IsNamed(double amperes, string basis)
    {
        Cable metric = Cable.Pair(WireSize.SquareMillimeters(1.5), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70);
        Assert.EndsWith(basis, Single(Rules.ConductorOverAmpacity, OnRun(new CableRun(metric, Length.FromMeters(1)), amperes)).Message, StringComparison.Ordinal);
    }

    // A piece of no length carries nothing: neither its ampacity nor the fuse in front of it is judged by it. 28 AWG carries 1.49 A in 40 °C, 24 AWG 2.988 A.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.1, 1)]
    public void APieceOfNoLength_IsNotJudged(double meters, int found)
    {
        var run = new CableRun(new CableSegment(Copper(24), Length.FromMeters(1)), new CableSegment(Copper(28), Length.FromMeters(meters)));
        Site site = OnRun(run, 1.8, SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2), cable: 40);
        Assert.Equal(found, Found(Rules.ConductorOverAmpacity, site).Count);
        Assert.Equal(found, Found(Rules.ProtectionAboveConductorAmpacity, site).Count);
    }

    // 30 AWG is smaller than anything published; a piece of no length of it is not there.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.1, 1)]
    public void APieceOfNoLength_IsInsideEveryRange(double meters, int found) => Assert.Equal(found, Found(Rules.ValueOutsideValidatedRange,
        OnRun(new CableRun(new CableSegment(Copper(20), Length.FromMeters(1)), new CableSegment(Copper(30), Length.FromMeters(meters))), 0.1)).Count);

    // Fuses of 2 A at two outputs that return together: 4 A through 24 AWG, which carries 2.988 A in 40 °C (NEC Table 310.16 and 310.15, from memory).
    // Two of 1.4 A are 2.8 A. A thin piece of no length on the way carries nothing.
    [Theory]
    [InlineData(2, 4.0)]
    [InlineData(1.4, null)]
    public void ACommonReturn_CarriesTheFusesOfItsOutputs(double rated, double? together)
    {
        var run = new CableRun(new CableSegment(Copper(24), Length.FromMeters(1)), new CableSegment(Copper(28), Length.Zero));
        var site = new Site("site", [Condition.Day(At(40))], [Box(protection: SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, rated))],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "one", run), new SiteRun(RunOrigin.Output(BoxName, 2), "two", new CableRun(Copper(24), Length.FromMeters(1)), returnAt: "one")],
            [new SiteDevice("first", Camera(Amperes(0.1)), "one"), new SiteDevice("second", Camera(Amperes(0.1)), "two")]);
        Finding? found = Found(Rules.ProtectionAboveConductorAmpacity, site).SingleOrDefault();
        Assert.Equal(together, found is null ? null : ((ElectricCurrent)found.Measured!).Amperes);
        if (found is null) return;
        Assert.Equal("box output 1 to one", found.About.Name);
        Assert.Equal(2.988, ((ElectricCurrent)found.Limit!).Amperes, 0.001);
        Assert.Equal("The protective devices of 2 outputs together carry 4 A. Its return conductor may carry 2.99 A at 40 °C.", found.Message);
    }

    // 0.765 A of the 0.77 A that a resettable fuse of 1.10 A holds in 50 °C is closer than 0.98 A of 0.99 A in 30 °C, though it is less current.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void NearlyTripping_IsByTheShareOfWhatItCarries(bool isHotFirst)
    {
        var hot = new Condition("hot", LoadComponents.None, At(box: 50));
        var mild = new Condition("mild", LoadComponents.Infrared, At(box: 30));
        Site site = Star(Box(protection: SmallDevices.Printed(1.10)), isHotFirst ? [hot, mild] : [mild, hot],
            (0, Camera(new ComponentDraw(Amperes(0.765), infrared: Amperes(0.98 - 0.765)))));
        Finding found = Single(Rules.NuisanceTrip, site);
        Assert.Equal((Severity.Caution, "hot"), (found.Severity, found.Condition!.Name));
        Assert.Equal(0.765, ((ElectricCurrent)found.Measured!).Amperes, 1e-9);
    }

    // 1.05 A of 0.77 A in 50 °C trips sooner than 1.3 A of 0.99 A in 30 °C.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Tripping_IsByTheShareOfWhatItCarries(bool isHotFirst)
    {
        var hot = new Condition("hot", LoadComponents.None, At(box: 50));
        var mild = new Condition("mild", LoadComponents.Infrared, At(box: 30));
        Site site = Star(Box(protection: SmallDevices.Printed(1.10)), isHotFirst ? [hot, mild] : [mild, hot],
            (0, Camera(new ComponentDraw(Amperes(1.05), infrared: Amperes(0.25)))));
        Finding found = Single(Rules.NuisanceTrip, site);
        Assert.Equal((Severity.Failure, "hot"), (found.Severity, found.Condition!.Name));
        Assert.Equal(0.77, ((ElectricCurrent)found.Limit!).Amperes, 1e-9);
    }

    // A blade fuse of 4 A: 3.5 A by day are above 75 % of it (common practice), 4.5 A at night above all of it, which is another rule's.
    [Theory]
    [InlineData(3.5, 3.5)]
    [InlineData(2.9, null)]
    [InlineData(4.1, null)]
    public void AContinuousLoad_IsOneThatTheFuseCarries(double day, double? measured)
    {
        Site site = Star(Box(protection: SmallDevices.Fuse(FuseCharacteristic.Blade, 4)), [Day, Night], (0, Camera(new ComponentDraw(Amperes(day), infrared: Amperes(4.5 - day)))));
        Finding? found = Found(Rules.FuseAboveContinuousPolicy(), site).SingleOrDefault();
        Assert.Equal(measured, ((ElectricCurrent?)found?.Measured)?.Amperes);
        Assert.Equal(measured is null ? null : "day", found?.Condition!.Name);
    }

    // A start takes all that starts, and lasts seconds.
    [Fact]
    public void AStart_IsNoContinuousLoad()
    {
        var start = new Condition("start", LoadComponents.StartUp, At());
        Site site = Star(Box(protection: SmallDevices.Fuse(FuseCharacteristic.Blade, 4)), [start], (0, Camera(new ComponentDraw(Amperes(3.5)))));
        Assert.Empty(Found(Rules.FuseAboveContinuousPolicy(), site));
    }

    // 60 W through 10 Ω ask for 5 A at 12 V, and 3.6 W pass: the devices need what they do not get.
    [Fact]
    public void WhatDoesNotPass_IsNeededAndNotDrawn()
    {
        Assert.StartsWith("Its outputs need 5.00 A in \"day\"; its supply can give 4.00 A, its full rating.",
            Single(Rules.SupplyAboveDeratedRating, Star(Box(Dc(amperes: 4)), [Day], (10, Camera(Watts(60))))).Message, StringComparison.Ordinal);
        Assert.StartsWith("Its 2 devices need 10.00 A in \"day\"; it can give 4.00 A.",
            Single(Rules.SplitAdapterBeyondRating, Shared(10, Adapter(Dc(amperes: 4)), [Day], Camera(Watts(60)), Camera(Watts(60)))).Message, StringComparison.Ordinal);
    }

    // 7.2 A of the 7.5 A that 10 A are in 60 °C (common practice) are a larger part than 9.4 A of 10 A.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Headroom_IsByTheShareOfTheRating(bool isHotFirst)
    {
        var hot = new Condition("hot", LoadComponents.None, At(box: 60));
        var mild = new Condition("mild", LoadComponents.Infrared, At());
        Finding found = Single(Rules.SupplyAboveHeadroomPolicy(), Star(Box(Dc(amperes: 10)), isHotFirst ? [hot, mild] : [mild, hot],
            (0, Camera(new ComponentDraw(Amperes(7.2), infrared: Amperes(2.2))))));
        Assert.Equal("Its outputs draw 7.20 A in \"hot\"; policy maximum 6.00 A: 80 % of 7.50 A.", found.Message);
    }

    // 62 °C inside leave 7 A of 10 A (half at 70 °C; common practice), of which 80 % are 5.6 A; with a quarter more of a rise of 25 K it is less.
    [Fact]
    public void Headroom_NamesTheUncertaintyOfTheHeat()
    {
        Supply supply = Dc(amperes: 10).WithEfficiency(0.6);
        double rise = HeatedEnclosure.Of(OnWall, Power.FromWatts(12 * 5.7 * ((1 / 0.6) - 1)), Temperature.FromDegreesCelsius(37)).Rise.Kelvins;
        Site site = Star(Box(supply).WithEnclosure(OnWall), [Condition.Day(At(box: 62 - rise))], (0, Camera(Amperes(5.7))));
        BoxInCondition box = site.Assess().Boxes[0].Worst;
        double inside = box.InsideTemperature!.Value.DegreesCelsius, more = (inside - (62 - rise)) / 4, left = 10 * (1 - ((inside + more - 50) / 40));
        Assert.True(left < 8 * (1 - ((inside - 50) / 40)));
        Finding found = Single(Rules.SupplyAboveHeadroomPolicy(), site);
        Assert.Equal(left, ((ElectricCurrent)found.Limit!).Amperes, 1e-6);
        Assert.EndsWith(FormattableString.Invariant($" A derated for {more:0.0#} K more."), found.Message, StringComparison.Ordinal);
    }

    // 12 V at 6 A are more than the 60 VA of a source of 12 V (5 VA a volt, IEC 60950-1 Table 2B, from memory).
    [Theory]
    [InlineData(1, "box output 1", "It claims to be ")]
    [InlineData(3, "box", "3 of its outputs claim to be ")]
    public void AClaimOfSeveralOutputs_IsOneFinding(int outputs, string about, string words)
    {
        var box = new DistributionBox(BoxName, LimitedOutputs.Holding(12, 4, 6), Enumerable.Range(1, outputs)
            .Select(n => new BoxOutput(n, ElectricCurrent.FromAmperes(4), ProtectiveDevice.None, PowerLimitClass.LimitedPowerSourceIec60950)));
        Finding found = Single(Rules.PowerLimitExceeded, Star(box, [Day], [.. Enumerable.Repeat((0.0, Camera(Amperes(0.1))), outputs)]));
        Assert.Equal(about, found.About.Name);
        Assert.StartsWith(words, found.Message, StringComparison.Ordinal);
    }

    // IEC 60335-1: 60 V DC, and a crest of 42.4 V; 48 V and 50 % are 72 V, 31 V are a crest of 43.84 V, and 24 V one of 33.9 V.
    [Fact]
    public void AnAccessibleVoltage_IsDirectOrACrest()
    {
        Assert.Equal("It gives up to 72 V DC; an accessible bare part may have at most 60 V.",
            Single(Rules.VoltageAboveAccessible, Fed(Dc(48, percent: 50))).Message);
        Assert.StartsWith("It gives up to 43.8 V at the crest; an accessible bare part may have at most 42.4 V.",
            Single(Rules.VoltageAboveAccessible, Fed(Dc(31, kind: CurrentKind.Ac))).Message, StringComparison.Ordinal);
        Assert.Empty(Found(Rules.VoltageAboveAccessible, Fed(Dc(24, kind: CurrentKind.Ac))));
        Assert.Empty(Found(Rules.VoltageAboveAccessible, Fed(Dc(48))));
        Assert.Equal("It gives up to 51 V AC; extra-low voltage ends at 50 V. Above that, wire it like line voltage.", Single(Rules.VoltageAboveExtraLow(), Fed(Dc(51, kind: CurrentKind.Ac))).Message);
        Assert.Equal("It gives up to 121 V DC; extra-low voltage ends at 120 V. Above that, wire it like line voltage.", Single(Rules.VoltageAboveExtraLow(), Fed(Dc(110, percent: 10))).Message);

        static Site Fed(Supply supply) => SmallSite.Single(0, new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.1)), Range(2, 200), Range(2, 200)), supply);
    }

    // Two grounds, each with shields of its own, of two boxes that do not state their ripple: all of them are counted, and both boxes named.
    [Fact]
    public void UnknownHum_CountsTheShieldsOfAllBoxes() =>
        Assert.Equal("The ground-loop hum on 3 video shields is unknown. Not in the site file: ripple of a, b.", Single(Rules.GroundLoopHumUnknown, ReturnSites.Of(
            [ReturnSites.Box("a", 12), ReturnSites.Box("b", 24)],
            [ReturnSites.Run("a", 1, "1", 1.0), ReturnSites.Run("b", 1, "2", 1.4), ReturnSites.Run("b", 2, "3", 1.6)],
            [ReturnSites.Amperes(1, 0.5), ReturnSites.Amperes(2, 0.4), ReturnSites.Amperes(3, 0.3)],
            [ReturnSites.Link(1, "g", 0.9), ReturnSites.Link(2, "h", 0.8), ReturnSites.Link(3, "h", 0.7)],
            [ReturnSites.Bond("g", "a", 0.1), ReturnSites.Bond("h", "b", 0.2)])).Message);

    // 60 W through 10 Ω have no balance.
    [Fact]
    public void WhereNothingSettles_NoVoltageIsTold()
    {
        Finding found = Single(Rules.SettlesBelowDropOut, SmallSite.Single(10, Camera(Watts(60), starting: Starts(9, 8))));
        Assert.Equal("Its voltage does not settle in \"day\"; it drops out at 8 V and cannot stay on.", found.Message);
        Assert.Null(found.Measured);
        Assert.Equal(8, ((ElectricPotential)found.Limit!).Volts);
    }

    // 8 A of 12 V are 1.5 Ω: behind 1 Ω and beside 0.5 A 6.9 V for 2 ms · 8/4.6 = 3.48 ms. It is 3.5 times the hold-up time of one and 1.7 times that of the other.
    [Theory]
    [InlineData(1, 2, "camera 1")]
    [InlineData(2, 1, "camera 2")]
    public void AnInrush_IsByTheHoldUpTime(double first, double second, string worst)
    {
        Device Holding(double milliseconds) => Camera(Amperes(0.25), starting: new Starting(Volts(9), Volts(8), softStart: true, holdUp: Duration.FromMilliseconds(milliseconds)));
        Site site = Shared(1, Holding(first), Holding(second),
            new Device("charging", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), dcInput: Wide, starting: Starts(6, 5), inrush: new Inrush(ElectricCurrent.FromAmperes(8), Duration.FromMilliseconds(2))));
        Finding found = Single(Rules.InrushBelowDropOut, site);
        string other = worst == "camera 1" ? "camera 2" : "camera 1";
        Assert.Equal("box", found.About.Name);
        Assert.Equal($"{worst} restarts in \"day\" when another device starts. It is below its drop-out voltage for 3.5 ms; its hold-up time is 1 ms. Restarting: {worst}, {other}.", found.Message);
    }

    // Air that is only known to be at least so warm: 10.1 A are beyond what is stated of the efficiency, 10 A · 12 V · (1/0.6 − 1) = 80 W at the least.
    [Fact]
    public void AtLeastSoHot_SaysThatItIsALowerBound()
    {
        Site site = Star(Box(StatedTo100Percent(0.6)).WithEnclosure(OnWall), [Condition.Day(At(box: 45))], (0, Camera(Amperes(10.1))));
        double inside = site.Assess().Boxes[0].Worst.InsideTemperature!.Value.DegreesCelsius;
        string printed = FormattableString.Invariant($"{inside:0.#}");
        Assert.Equal($"The air in its enclosure is at least {printed} °C in \"day\"; its supply is rated up to 70 °C.", Single(Rules.SupplyTooHot, site).Message);
        Assert.Equal($"In \"day\" its supply gives 10.10 A, above its last stated efficiency. The temperature in its enclosure is unknown, but at least {printed} °C.",
            Single(Rules.EnclosureTemperatureUnknown, site).Message);
        Site within = Star(Box(StatedTo100Percent(0.6)).WithEnclosure(OnWall), [Condition.Day(At(box: 45))], (0, Camera(Amperes(9.9))));
        Assert.DoesNotContain("least", Single(Rules.SupplyTooHot, within).Message, StringComparison.Ordinal);
        Assert.Empty(Found(Rules.EnclosureTemperatureUnknown, within));
    }

    // Rated to 70 °C; the calculation is good to a quarter of the rise. 68 °C of a great rise may be hotter than 69.6 °C of a small one.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void NearlyTooHot_IsWithTheUncertainty(bool isLoadedFirst)
    {
        static double Rise(double watts, double celsius) => HeatedEnclosure.Of(OnWall, Power.FromWatts(watts), Temperature.FromDegreesCelsius(celsius)).Rise.Kelvins;
        Supply supply = Dc(amperes: 10).WithEfficiency(0.8);
        var loaded = new Condition("loaded", LoadComponents.Infrared, At(box: 68 - Rise(30, 50)));
        var hot = new Condition("hot", LoadComponents.None, At(box: 69.6 - Rise(3, 66)));
        Site site = Star(Box(supply).WithEnclosure(OnWall), isLoadedFirst ? [loaded, hot] : [hot, loaded], (0, Camera(new ComponentDraw(Amperes(1), infrared: Amperes(9)))));
        BoxAssessment box = site.Assess().Boxes[0];
        double Inside(string name) => box.InConditions.Single(c => c.Condition.Name == name).InsideTemperature!.Value.DegreesCelsius;
        Assert.True(Inside("loaded") < Inside("hot") && Inside("hot") < 70);
        Assert.Equal("loaded", Single(Rules.ThinHeatMargin, site).Condition!.Name);
        Assert.Single(Found(Rules.ThinHeatMargin, Star(Box(supply).WithEnclosure(OnWall), [hot], (0, Camera(Amperes(1))))));
    }

    // Hotter than it may be by calculation is thin as well, but only where something was calculated: 71 °C in the shade are measured.
    [Theory]
    [InlineData(71, false, 0)]
    [InlineData(70, true, 1)]
    [InlineData(20, true, 0)]
    public void AMarginOfHeat_IsThatOfACalculation(double air, bool isEnclosed, int found)
    {
        DistributionBox box = Box(Dc(amperes: 10).WithEfficiency(0.9));
        Assert.Equal(found, Found(Rules.ThinHeatMargin, Star(isEnclosed ? box.WithEnclosure(OnWall) : box, [Condition.Day(At(box: air))], (0, Camera(Amperes(2))))).Count);
    }

    // Half a second of 8 A are 32 A²s: more than half of what a resettable fuse of 1.10 A is estimated to take in 50 °C; a fuse states what it takes.
    [Fact]
    public void AnEstimate_IsCalledOne()
    {
        Device Surging(double seconds) => new("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.1)), Wide, inrush: new Inrush(ElectricCurrent.FromAmperes(8), Duration.FromSeconds(seconds)));
        Condition warm = new("warm", LoadComponents.None, At(box: 50));
        Assert.Contains(" withstands, estimated from its time to trip.", Single(Rules.NuisanceTrip, Star(Box(protection: SmallDevices.Printed(1.10)), [warm], (0, Surging(0.5)))).Message, StringComparison.Ordinal);
        Assert.DoesNotContain("estimated", Single(Rules.NuisanceTrip,
            Star(Box(protection: SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 1, meltingIntegral: 0.5)), [warm], (0, Surging(0.05)))).Message, StringComparison.Ordinal);
    }

    // Where the heat is that derates a supply is said: inside, where it was calculated.
    [Theory]
    [InlineData(true, " °C inside.")]
    [InlineData(false, " °C.")]
    public void ADeratedRating_SaysWhereItIsHot(bool isEnclosed, string end)
    {
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero, overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(12))), Derating.GenericEnclosed);
        DistributionBox box = Box(supply.WithEfficiency(0.9));
        Finding found = Single(Rules.SupplyAboveDeratedRating, Star(isEnclosed ? box.WithEnclosure(OnWall) : box, [Condition.Day(At(box: 55))], (0, Camera(Amperes(9.5)))));
        Assert.Contains(" derated from 10.00 A for ", found.Message, StringComparison.Ordinal);
        Assert.Equal(isEnclosed, found.Message.Contains(" °C inside.", StringComparison.Ordinal));
        Assert.Contains(end, found.Message, StringComparison.Ordinal);
    }

    // A reader counts these apart: they are not wrong, but not known.
    [Fact]
    public void SomeRules_AreAboutWhatIsNotStated() => Assert.Equal(
        ["ac-input-not-stated", "enclosure-temperature-unknown", "faults-unknown", "ground-loop-hum-unknown", "receptacle-load-unknown"],
        RuleSet.Standard.Rules.Where(r => r.IsAboutWhatIsNotStated).Select(r => r.Id).Order(StringComparer.Ordinal));

    // Wires in parallel are too large together, and too small one by one: 2 × 1.309 mm² of 16 AWG in terminals up to 2.081 mm², 0.081 mm² of 28 AWG in terminals from 0.205 mm² (ASTM B258).
    [Theory]
    [InlineData(16, 2.617)]
    [InlineData(28, 0.081)]
    [InlineData(18, null)]
    public void ParallelWires_AreMeasuredByWhatIsWrong(int gauge, double? squareMillimeters)
    {
        Conductor doubled = new Conductor(WireSize.Awg(gauge), Stranding.Solid, ConductorMaterial.AnnealedCopper).InParallel(2);
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(3), terminals: new TerminalRange(WireSize.Awg(24), WireSize.Awg(14)));
        var site = new Site("site", [Day], [box], [new SiteRun(RunOrigin.Output(BoxName, 1), "end", new CableRun(new Cable(doubled, doubled), Length.FromMeters(1)))],
            [new SiteDevice("camera 1", Camera(Amperes(0.1)), "end")]);
        Assert.Equal(squareMillimeters, ((Area?)Found(Rules.TerminalWrongSize, site).SingleOrDefault()?.Measured)?.SquareMillimeters is double area ? Math.Round(area, 3) : null);
    }

    private static Supply StatedTo100Percent(double efficiency)
    {
        Supply plain = Dc(amperes: 10);
        return new Supply("supply", plain.Output, plain.Derating, new SupplyInput(efficiency: new ShareCurve<Ratio>(
            new(Ratio.FromPercent(20), Ratio.FromDecimalFractions(efficiency)), new(Ratio.FromPercent(100), Ratio.FromDecimalFractions(efficiency)))));
    }

    private static Cable Copper(int gauge) => Cable.Pair(WireSize.Awg(gauge), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    private static Site OnRun(CableRun run, double amperes, ProtectiveDevice? device = null, double cable = 20) => new("site", [Condition.Day(At(cable))], [Box(protection: device)],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run)], [new SiteDevice("camera 1", Camera(Amperes(amperes)), "end")]);

    private static Finding Single(Rule rule, Site site) => Assert.Single(Found(rule, site));

    private static IReadOnlyList<Finding> Found(Rule rule, Site site) => [.. rule.Check(new Evidence(site.Assess()))];
}
