using System;
using System.Linq;
using CamPower.Tests.Sites;
using CamPower.Tests.Working;
using CamPower.Tests.Protection;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Heat;

/// <summary>What is lost in a box, how warm it makes the enclosure, and what that does to the supply.</summary>
public class BoxHeatTests
{
    private static readonly Enclosure OnWall = new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15),
        EnclosureWall.PaintedSteel, EnclosureFaces.OnWall, otherHeat: Power.FromWatts(2));

    private static readonly ResettableFuse Ptc = SmallDevices.Printed(1.10);

    // By hand: 12 V and 2 % are 12.24 V; 8 A at 90 % lose 12.24·8/9 = 10.88 W; 3² + 5² A² through 0.14 Ω at 20 °C 4.76 W,
    // 1 % more for every kelvin that the air inside is warmer; 2 W beside.
    [Fact]
    public void Losses_AreAsWorkedByHand()
    {
        BoxInCondition box = Boxed(Dc(amperes: 10, percent: 2).WithEfficiency(0.9), At(), 3, 5);
        CamPower.Heat.BoxLosses losses = box.Losses!;
        Assert.Equal(10.88, (double)losses.Supply.Watts, 1e-9);
        double devices = 4.76 * (1 + (0.01 * (box.InsideTemperature!.Value.DegreesCelsius - 20)));
        Assert.Equal(devices, (double)losses.Devices.Watts, 1e-6);
        Assert.Equal(2, (double)losses.Other.Watts);
        Assert.Equal(10.88 + devices + 2, (double)losses.Total.Watts, 1e-6);
        Steps.AssertEvaluate(losses.Explain());
        Steps.AssertRenders(losses.Explain());
    }

    [Fact]
    public void Inside_IsThatOfTheEnclosureWithTheseLosses()
    {
        Surroundings noon = new(Celsius(30), Celsius(38), Celsius(30), Irradiance.FromWattsPerSquareMeter(700));
        BoxInCondition box = Boxed(Dc(amperes: 10).WithEfficiency(0.85), noon, 4, 4);
        HeatedEnclosure expected = HeatedEnclosure.Of(OnWall, box.Losses!.Total, Celsius(38), Irradiance.FromWattsPerSquareMeter(700));
        Assert.Equal(expected.Inside.DegreesCelsius, box.InsideTemperature!.Value.DegreesCelsius, 1e-9);
        Derivation derivation = box.Explain();
        Steps.AssertEvaluate(derivation);
        Steps.AssertRenders(derivation);
        Assert.Equal(box.InsideTemperature!.Value.DegreesCelsius, derivation.Steps[^1].Value, 1e-9);
    }

    // Thin air high above the sea convects less: the height of the site reaches its enclosures.
    [Fact]
    public void Inside_IsThatOfTheAltitudeOfTheSite()
    {
        Site low = Star(Box(Dc(amperes: 10).WithEfficiency(0.85)).WithEnclosure(OnWall), [Condition.Day(At(box: 31))], (0, Camera(Amperes(4))));
        var high = new Site(low.Name, low.Conditions, low.Boxes, low.Runs, low.Devices, altitude: Length.FromMeters(2600));
        BoxInCondition atSea = low.Assess().Boxes[0].Worst, above = high.Assess().Boxes[0].Worst;
        Assert.Equal(HeatedEnclosure.Of(OnWall, above.Losses!.Total, Celsius(31), altitude: Length.FromMeters(2600)).Inside.DegreesCelsius, above.InsideTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.True(above.InsideTemperature!.Value.DegreesCelsius > atSea.InsideTemperature!.Value.DegreesCelsius + 0.2);
    }

    // Three conditions that differ in sun, air and load: each has its own inside, in all orders.
    [Theory]
    [InlineData(0, 1, 2)]
    [InlineData(0, 2, 1)]
    [InlineData(1, 0, 2)]
    [InlineData(1, 2, 0)]
    [InlineData(2, 0, 1)]
    [InlineData(2, 1, 0)]
    public void Inside_IsThatOfTheSunTheAirAndTheLossesOfItsCondition(int first, int second, int third)
    {
        var lit = new Enclosure(OnWall.Width, OnWall.Height, OnWall.Depth, OnWall.Wall, OnWall.FreeFaces, Area.FromSquareMeters(0.12), otherHeat: Power.FromWatts(2));
        (Condition Condition, double Amperes, double Sun, double Air)[] three =
        [
            (In("dusk", LoadComponents.None, 150, 21), 3, 150, 21), (In("noon", LoadComponents.Motor, 900, 33), 3.5, 900, 33), (In("night", LoadComponents.Infrared, 0, -4), 5, 0, -4),
        ];
        Device camera = Camera(new ComponentDraw(Amperes(3), infrared: Amperes(2), motor: Amperes(0.5)));
        var order = new[] { three[first], three[second], three[third] };
        BoxAssessment box = Star(Box(Dc(amperes: 10).WithEfficiency(0.85)).WithEnclosure(lit), order.Select(o => o.Condition), (0, camera)).Assess().Boxes[0];
        foreach (((Condition condition, double amperes, double sun, double air), BoxInCondition solved) in order.Zip(box.InConditions))
        {
            // 12 V · I · (1/0.85 − 1) and 2 W beside.
            var losses = Power.FromWatts((12 * amperes * ((1 / 0.85) - 1)) + 2);
            Assert.Same(condition, solved.Condition);
            Assert.Equal(HeatedEnclosure.Of(lit, losses, Celsius(air), Irradiance.FromWattsPerSquareMeter(sun)).Inside.DegreesCelsius, solved.InsideTemperature!.Value.DegreesCelsius, 1e-6);
        }

        static Condition In(string name, LoadComponents on, double sun, double air) =>
            new(name, on, new Surroundings(Celsius(20), Celsius(air), Celsius(20), Irradiance.FromWattsPerSquareMeter(sun)));
    }

    // The inside, not the air around, derates the supply: the generic curve loses 2.5 % for every kelvin above 50 °C.
    [Fact]
    public void Derating_IsThatOfTheInside()
    {
        BoxInCondition box = Boxed(Dc(amperes: 10).WithEfficiency(0.85), At(box: 45), 4, 4);
        double inside = box.InsideTemperature!.Value.DegreesCelsius;
        Assert.InRange(inside, 55, 68);
        Assert.Equal(10 * (1 - (0.025 * (inside - 50))), box.DeratedRating.Amperes, 1e-9);
    }

    [Fact]
    public void WithoutEnclosure_TheInsideIsTheAirAround()
    {
        BoxInCondition box = Star(Box(Dc().WithEfficiency(0.5)), [Condition.Day(At(box: 33.5))], (0, Camera(Amperes(5)))).Assess().Boxes[0].Worst;
        Assert.Equal(33.5, box.InsideTemperature!.Value.DegreesCelsius);
        Assert.Null(box.Heat);
        Assert.Null(box.Losses);
        Assert.Throws<InvalidOperationException>(box.Explain);
    }

    // Nobody guesses an efficiency: the rating is that of the air around, and a finding says so.
    [Fact]
    public void WithoutEfficiency_TheInsideIsUnknown()
    {
        BoxInCondition box = Boxed(Dc(amperes: 10), At(box: 60), 3);
        Assert.Null(box.InsideTemperature);
        Assert.Null(box.Heat);
        Assert.Equal(7.5, box.DeratedRating.Amperes, 1e-9);
        Assert.Throws<InvalidOperationException>(box.Explain);
    }

    // Before the first point of the curve the losses are those at it, 2 A·12 V·(1/0.8 − 1) = 6 W; beyond the last at least those at it,
    // 10 A·12 V·(1/0.9 − 1) = 13.33 W.
    [Theory]
    [InlineData(0.5, 6.0, false)]
    [InlineData(2, 6.0, false)]
    [InlineData(6, 12 * 6 * ((1 / 0.85) - 1), false)]
    [InlineData(10, 12 * 10 * ((1 / 0.9) - 1), false)]
    [InlineData(10.1, 12 * 10 * ((1 / 0.9) - 1), true)]
    public void Losses_FollowTheEfficiencyCurve(double amperes, double watts, bool isAtLeast)
    {
        var curve = new ShareCurve<Ratio>(new(Ratio.FromPercent(20), Ratio.FromPercent(80)), new(Ratio.FromPercent(100), Ratio.FromPercent(90)));
        Supply plain = Dc(amperes: 10);
        BoxInCondition box = Boxed(new Supply("supply", plain.Output, plain.Derating, new SupplyInput(efficiency: curve)), At(), amperes);
        Assert.Equal(watts, (double)box.Losses!.Supply.Watts, 1e-9);
        Assert.Equal((isAtLeast, isAtLeast), (box.Losses.IsAtLeast, box.IsInsideAtLeast));
        Assert.Equal(HeatedEnclosure.Of(OnWall, box.Losses.Total, Celsius(25)).Inside.DegreesCelsius, box.InsideTemperature!.Value.DegreesCelsius, 1e-9);
        Steps.AssertEvaluate(box.Explain());
    }

    // Two of three motors stand: the supply loses for 1 + 2·0.5 + 1 A.
    [Fact]
    public void Losses_AreOfTheMotorsThatMove()
    {
        var moving = new Condition("one moves", LoadComponents.Motor, At(), motorsMoving: 1);
        Device camera = Camera(new ComponentDraw(Amperes(0.5), motor: Amperes(0.5)));
        DistributionBox box = Box(Dc(amperes: 10).WithEfficiency(0.5)).WithEnclosure(OnWall);
        BoxInCondition solved = Star(box, [moving], (0, camera), (0, camera), (0, camera)).Assess().Boxes[0].Worst;
        Assert.Equal(12 * 2, (double)solved.Losses!.Supply.Watts, 1e-9);
    }

    // In the shade inside its curve, in the sun beyond it: the one finding is that the box is too hot, not that it is overloaded.
    [Fact]
    public void Sun_MakesTheBoxTooHot()
    {
        Supply supply = Dc(amperes: 10).WithEfficiency(0.85);
        var lit = new Enclosure(OnWall.Width, OnWall.Height, OnWall.Depth, OnWall.Wall, OnWall.FreeFaces, Area.FromSquareMeters(0.12));
        Surroundings shade = At(box: 45), sun = new(shade.Cable, shade.Box, shade.Camera, Irradiance.FromWattsPerSquareMeter(CamPower.Heat.HeatConstants.PeakSun.Value));
        string[] Findings(Surroundings at) => [.. WithoutFaultsUnknown.Check(Star(Box(supply).WithEnclosure(lit), [Condition.Day(at)], (0, Camera(Amperes(4)))).Assess()).Select(f => f.Rule)];
        Assert.Empty(Findings(shade));
        Assert.Equal(["supply-too-hot"], Findings(sun));
    }

    // An hour of more than the curve knows is no cooler than one just within it: what is found there is found beyond it, and that nobody knows how much more.
    [Fact]
    public void BeyondTheEfficiencyCurve_NothingIsForgiven()
    {
        Supply plain = Dc(amperes: 10);
        var curve = new ShareCurve<Ratio>(new(Ratio.FromPercent(20), Ratio.FromPercent(60)), new(Ratio.FromPercent(100), Ratio.FromPercent(70)));
        var supply = new Supply("supply", plain.Output, plain.Derating, new SupplyInput(efficiency: curve));
        string[] within = Found(9.99), beyond = Found(10.03);
        Assert.Contains("supply-too-hot", within);
        Assert.Equal(within.Append("enclosure-temperature-unknown").Order(), beyond.Order());

        string[] Found(double amperes) => [.. RuleSet.Standard.Check(Star(Box(supply).WithEnclosure(OnWall), [Condition.Day(At(box: 45))], (0, Camera(Amperes(amperes)))).Assess()).Select(f => f.Rule)];
    }

    // The generic resettable fuse of 1.10 A holds 0.35 of it, 0.385 A, at the end of its curve, 85 °C: in 86 °C at most that.
    [Theory]
    [InlineData(84, 0.4, true)]
    [InlineData(86, 0.4, true)]
    [InlineData(86, 0.38, false)]
    public void HotterThanItsCurve_AResettableFuseCarriesNoMore(double celsius, double amperes, bool trips)
    {
        var hardy = new Derating(new ShareCurve<Temperature>(new(Celsius(-40), Ratio.FromPercent(100)), new(Celsius(100), Ratio.FromPercent(100))));
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, new Supply("supply", Dc().Output, hardy), 1, ElectricCurrent.FromAmperes(1.1), Ptc);
        SiteAssessment solved = Star(box, [Condition.Day(At(box: celsius))], (0, Camera(Amperes(amperes)))).Assess();
        Assert.Equal(trips, RuleSet.Standard.Check(solved).Any(f => f.Rule == "nuisance-trip" && f.Severity == Severity.Failure));
        if (celsius > 85) Assert.Equal(0.385, solved.StudyFaults()[0].InConditions[0].Carried!.Value.Amperes, 1e-9);
    }

    // Rated from −20 °C: below it nothing may be drawn, and a mountain does not warm it, though its 5 K count at the hot end.
    [Fact]
    public void TooCold_IsSaidInItsOwnWords_AndNoMountainWarmsIt()
    {
        Site low = Star(Box(), [Condition.Day(At(box: -24))], (0, Camera(Amperes(1))));
        var high = new Site(low.Name, low.Conditions, low.Boxes, low.Runs, low.Devices, altitude: Length.FromMeters(3000));
        foreach (Site site in new[] { low, high })
        {
            Finding found = Assert.Single(RuleSet.Standard.Check(site.Assess()), f => f.Rule == "supply-too-cold");
            Assert.Equal("The air around it is at -24 °C in \"day\"; its supply is rated down to -20 °C.", found.Message);
            Assert.Equal((-24, -20), (((Temperature)found.Measured!).DegreesCelsius, ((Temperature)found.Limit!).DegreesCelsius));
            Assert.Contains("to a warmer place", found.Remedy, StringComparison.Ordinal);
        }

        Assert.Equal(0, Derating.GenericEnclosed.ShareAt(Celsius(-24), altitude: Length.FromMeters(3000)).DecimalFractions);
        Assert.Equal(1, Derating.GenericEnclosed.ShareAt(Celsius(-20), altitude: Length.FromMeters(3000)).DecimalFractions);
    }

    // Too cold at night, overloaded by day: two causes, two findings.
    [Fact]
    public void TooColdAtNight_DoesNotHideTheOverloadByDay()
    {
        Device camera = Camera(new ComponentDraw(Amperes(10.5)));
        Site site = Star(Box(Dc(amperes: 10)), [Condition.Day(At()), Condition.Night(At(box: -25))], (0, camera));
        Assert.Equal([("supply-too-cold", "night"), ("supply-above-derated-rating", "day")],
            WithoutFaultsUnknown.Check(site.Assess()).Select(f => (f.Rule, f.Condition!.Name)));
    }

    // Too hot by day, overloaded at night: two causes, two findings.
    [Fact]
    public void TooHotByDay_AndOverloadedAtNight_AreTwoFindings()
    {
        Device camera = Camera(new ComponentDraw(Amperes(1), infrared: Amperes(9.5)));
        Site site = Star(Box(Dc(amperes: 10)), [Condition.Day(At(box: 75)), Condition.Night(At())], (0, camera));
        Assert.Equal(["supply-too-hot", "supply-above-derated-rating"], WithoutFaultsUnknown.Check(site.Assess()).Select(f => f.Rule));
    }

    // Too hot by day, loaded to 85 % at night; an adapter too hot by day and split beyond its rating at night.
    [Fact]
    public void TooHotByDay_DoesNotHideTheHeadroomOrTheSplitAtNight()
    {
        Condition[] conditions = [Condition.Day(At(box: 75)), Condition.Night(At())];
        Site loaded = Star(Box(Dc(amperes: 10)), conditions, (0, Camera(new ComponentDraw(Amperes(1), infrared: Amperes(7.5)))));
        Assert.Equal(["supply-too-hot", "supply-above-headroom-policy"], WithoutFaultsUnknown.Check(loaded.Assess()).Select(f => f.Rule));
        Device camera = Camera(new ComponentDraw(Amperes(0.1), infrared: Amperes(1)));
        Site split = Shared(0, Adapter(Dc(amperes: 2)), conditions, camera, camera);
        Assert.Equal(["supply-too-hot", "split-adapter-beyond-rating"], WithoutFaultsUnknown.Check(split.Assess()).Select(f => f.Rule));
    }

    // A box that may not be so hot at 3000 m: 5 K less, by the generic altitude derating (common practice, no source).
    [Theory]
    [InlineData(64.9, false)]
    [InlineData(65.1, true)]
    public void TooHot_CountsTheAltitude(double celsius, bool isTooHot)
    {
        Site low = Star(Box(), [Condition.Day(At(box: celsius))], (0, Camera(Amperes(1))));
        var high = new Site(low.Name, low.Conditions, low.Boxes, low.Runs, low.Devices, altitude: Length.FromMeters(3000));
        Assert.Equal(isTooHot, WithoutFaultsUnknown.Check(high.Assess()).Any(f => f.Rule == "supply-too-hot"));
    }

    // The smallest box is sought with the heat of each candidate: a supply that wastes more must be larger.
    [Fact]
    public void SmallestBox_CountsTheHeatOfEachSupply()
    {
        DistributionBox[] catalog = [Candidate("wasteful", 10, 0.7), Candidate("thrifty", 11, 0.95)];
        Site site = Star(Box(Dc().WithEfficiency(0.9)).WithEnclosure(OnWall), [Condition.Day(At(box: 40))], (0, Camera(Amperes(7.5))));
        Assert.Equal("thrifty", site.SmallestBoxFor(BoxName, catalog, SizingPolicy.CommonPractice).Chosen!.Name);
        Site open = Star(Box(Dc().WithEfficiency(0.9)), site.Conditions, (0, Camera(Amperes(7.5))));
        Assert.Equal("wasteful", open.SmallestBoxFor(BoxName, catalog, SizingPolicy.CommonPractice).Chosen!.Name);
    }

    private static DistributionBox Candidate(string name, double amperes, double efficiency) =>
        DistributionBox.OfEqualOutputs(name, Dc(amperes: amperes).WithEfficiency(efficiency), 4, ElectricCurrent.FromAmperes(9));

    private static BoxInCondition Boxed(Supply supply, Surroundings at, params double[] amperes)
    {
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, supply, amperes.Length, ElectricCurrent.FromAmperes(50), Ptc).WithEnclosure(OnWall);
        return Star(box, [Condition.Day(at)], [.. amperes.Select(a => (0.0, Camera(Amperes(a))))]).Assess().Boxes[0].Worst;
    }

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);
}
