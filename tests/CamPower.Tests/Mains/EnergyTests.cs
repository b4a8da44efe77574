using System;
using System.Linq;
using CamPower.Mains;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Mains;

public class EnergyTests
{
    // By hand: 12 V · 10 A / 0.85 = 141.18 W by day, 12 V · 5 A / 0.85 = 70.59 W at night, each for half of 8760 h: 618.35 kWh and 309.18 kWh.
    [Fact]
    public void Year_IsPowerTimesTheHoursOfEachCondition()
    {
        EnergyAssessment energy = Site(dayHours: 4380, nightHours: 4380).Assess().StudyEnergy();
        Assert.Equal(120 / 0.85, (double)energy.InConditions[0].Power!.Value.Watts, 1e-9);
        Assert.Equal(618.35, energy.InConditions[0].EnergyAYear!.Value.KilowattHours, 0.005);
        Assert.Equal(309.18, energy.InConditions[1].EnergyAYear!.Value.KilowattHours, 0.005);
        Assert.Equal(927.53, energy.Year!.Value.KilowattHours, 0.005);
        Assert.Equal(0.3 * 927.53, energy.CostOfYear!.Value, 0.005);
        Assert.Equal(0, energy.HoursNotStated.Hours, 1e-9);
        Assert.Equal(1.2 / 0.85, energy.InConditions[0].Energy!.Value.KilowattHours, 1e-9);
        Derivation working = energy.Explain();
        Assert.Equal(energy.CostOfYear.Value, working.Steps[^1].Value, 1e-9);
    }

    [Fact]
    public void Year_SaysOfHowManyHoursNothingIsStated()
    {
        EnergyAssessment energy = Site(dayHours: 760, nightHours: null).Assess().StudyEnergy();
        Assert.Equal(8000, energy.HoursNotStated.Hours, 1e-9);
        Assert.Equal(0.76 * 120 / 0.85, energy.Year!.Value.KilowattHours, 1e-9);
        Assert.Contains("8000 h", energy.ToString(), StringComparison.Ordinal);
        Assert.Null(energy.InConditions[1].EnergyAYear);
    }

    [Fact]
    public void Year_IsNotKnownWithoutHoursOrWithoutEfficiency()
    {
        Assert.Null(Site(dayHours: null, nightHours: null).Assess().StudyEnergy().Year);
        EnergyAssessment bare = Site(4380, 4380, Dc(12, 10)).Assess().StudyEnergy();
        Assert.Null(bare.Year);
        Assert.Null(bare.CostOfYear);
        Assert.Equal("box", bare.InConditions[0].NotKnown.Single().Name);
        Assert.Throws<InvalidOperationException>(bare.Explain);
    }

    // By hand: 0.5 W without a load, and 12 V · 2 A / 0.85 = 28.24 W at the first point of the curve, a fifth of 10 A; at 1 A half way: 14.37 W.
    [Theory]
    [InlineData(2, 28.235)]
    [InlineData(1, 14.368)]
    [InlineData(1e-6, 0.5)]
    public void BelowTheFirstPointOfTheCurve_PowerFallsToTheStandbyPower(double amperes, double watts)
    {
        Supply sheet = Receptacles.Sheet(curvesFrom: 20);
        var input = new SupplyInput(efficiency: sheet.Input!.Efficiency, standbyPower: Power.FromWatts(0.5));
        Site site = Star(Box(new Supply("supply", sheet.Output, Derating.GenericEnclosed, input)), [Condition.Day(At())], (0, Camera(Amperes(amperes))));
        Assert.Equal(watts, (double)site.Assess().StudyEnergy().InConditions[0].Power!.Value.Watts, 0.001);
    }

    // Standby of a supply that feeds nothing is counted where it is stated, and unknown where neither it nor an efficiency is.
    [Fact]
    public void IdleSupply_TakesItsStandbyPower()
    {
        Supply idle = new("supply", Dc(12, 10).Output, Derating.GenericEnclosed, new SupplyInput(standbyPower: Power.FromWatts(0.3)));
        Assert.Equal(0.3, (double)new Site("site", [Condition.Day(At())], [Box(idle)], [], []).Assess().StudyEnergy().InConditions[0].Power!.Value.Watts, 1e-12);
        Assert.Null(new Site("site", [Condition.Day(At())], [Box(Dc())], [], []).Assess().StudyEnergy().InConditions[0].Power);
    }

    [Fact]
    public void Site_RefusesMoreHoursThanAYearHas()
    {
        var refused = Assert.Throws<ArgumentException>(() => Site(dayHours: 5000, nightHours: 3785));
        Assert.Contains("8785 h", refused.Message, StringComparison.Ordinal);
        Assert.NotNull(Site(dayHours: 5000, nightHours: 3784));
        Assert.Throws<ArgumentOutOfRangeException>(() => Day(8785));
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(double.NaN)]
    public void Price_RefusesWhatNoneIs(double price) => Assert.Equal("perKilowattHour",
        Assert.Throws<ArgumentOutOfRangeException>(() => new EnergyPrice(price, "EUR")).ParamName);

    private static Condition Day(double? hours) =>
        new("day", LoadComponents.Infrared, At(), duration: Duration.FromHours(10), hoursAYear: hours is double h ? Duration.FromHours(h) : null);

    private static Site Site(double? dayHours, double? nightHours, Supply? supply = null)
    {
        var night = new Condition("night", LoadComponents.None, At(), hoursAYear: nightHours is double h ? Duration.FromHours(h) : null);
        Site site = Star(Box(supply ?? Receptacles.Sheet()), [Day(dayHours), night], (0, Camera(new ComponentDraw(Amperes(5), infrared: Amperes(5)))));
        return new Site(site.Name, site.Conditions, site.Boxes, site.Runs, site.Devices, energyPrice: new EnergyPrice(0.3, "EUR"));
    }
}
