using System;
using System.Linq;
using CamPower.Mains;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Mains;

public class UninterruptibleTests
{
    // By hand: 12 V · 5 A / 0.85 = 70.59 W, over 0.95 = 74.30 VA, 0.619 A at 120 V.
    [Fact]
    public void Load_IsWhatItsBoxesTakeFromTheLine()
    {
        UninterruptibleInCondition at = Behind(Unit(), 5).Assess().StudyUninterruptible().Single().Worst;
        Assert.Equal(60 / 0.85, (double)at.Power!.Value.Watts, 1e-9);
        Assert.Equal(60 / 0.85 / 0.95, at.ApparentPower!.Value.Voltamperes, 1e-9);
        Assert.Equal(Verdict.Holds, at.OfPower.Verdict);
    }

    // 100 W for 30 min and 200 W for 10 min: at 150 W it is at least 10 min, and at most the 20 min on the line.
    [Theory]
    [InlineData(50, 30, double.PositiveInfinity)]
    [InlineData(100, 30, 30)]
    [InlineData(150, 10, 20)]
    [InlineData(200, 10, 10)]
    [InlineData(200.1, 0, 0)]
    public void Runtime_LiesBetweenTheNextPointAndTheLine(double watts, double least, double most)
    {
        Assert.Equal(least * 60, Unit().LeastSecondsAt(watts), 1e-9);
        Assert.Equal(most * 60, Unit().MostSecondsAt(watts), 1e-9);
    }

    // 70.6 W: at least 30 min. Wanted 24 min are 80 % of it; with 24.1 min the aged battery falls short, with 30.1 min nothing is certain below the first point.
    [Theory]
    [InlineData(24, Verdict.Holds)]
    [InlineData(24.1, Verdict.ThinMargin)]
    [InlineData(30, Verdict.ThinMargin)]
    [InlineData(30.1, Verdict.Unknown)]
    public void BelowTheFirstPoint_ItRunsAtLeastAsLongAsThere(double wanted, Verdict verdict) =>
        Assert.Equal(verdict, Behind(Unit(wanted: wanted), 5).Assess().StudyUninterruptible().Single().Worst.Lasts.Verdict);

    // 10 A are 141.18 W: at least 10 min, at most 30 - 20·0.4118 = 21.76 min.
    [Theory]
    [InlineData(8, Verdict.Holds)]
    [InlineData(10, Verdict.ThinMargin)]
    [InlineData(21.7, Verdict.Unknown)]
    [InlineData(21.8, Verdict.Violated)]
    public void BetweenTwoPoints_WhatTheyLeaveOpenIsUnknown(double wanted, Verdict verdict) =>
        Assert.Equal(verdict, Behind(Unit(wanted: wanted), 10).Assess().StudyUninterruptible().Single().Worst.Lasts.Verdict);

    // 74.3 VA of 74: the watts hold and the voltamperes do not.
    [Fact]
    public void ApparentPower_BindsBesideThePower()
    {
        UninterruptibleInCondition at = Behind(Unit(voltamperes: 74), 5).Assess().StudyUninterruptible().Single().Worst;
        Assert.Equal((Verdict.Holds, Verdict.Violated), (at.OfPower.Verdict, at.OfApparentPower.Verdict));
    }

    // By hand: 0.6192 A with a crest factor of 2.8 are 1.734 A; 100 VA at 120 V with 2 are 1.667 A, with 2.1 they are 1.75 A.
    [Theory]
    [InlineData(2, Verdict.Violated)]
    [InlineData(2.1, Verdict.Holds)]
    public void Peak_IsHeldAgainstTheCrestFactor(double crest, Verdict verdict) =>
        Assert.Equal(verdict, Behind(Unit(voltamperes: 100, crest: crest), 5).Assess().StudyUninterruptible().Single().Worst.OfPeak.Verdict);

    [Fact]
    public void WhatIsNotStated_IsAskedFor()
    {
        var evidence = new Evidence(Behind(Unit(crest: null, wanted: 21), 10).Assess());
        Assert.Contains("crest factor of the uninterruptible supply", evidence.NotStated.Select(g => g.Key));
        Assert.Contains("runtime of the uninterruptible supply nearer to its load", evidence.NotStated.Select(g => g.Key));
    }

    [Fact]
    public void Supply_RefusesWhatNoneIs()
    {
        Assert.Equal("apparentPower", Assert.Throws<ArgumentOutOfRangeException>(() => Unit(voltamperes: 0)).ParamName);
        Assert.Equal("crestFactor", Assert.Throws<ArgumentOutOfRangeException>(() => Unit(crest: 0.9)).ParamName);
        RuntimePoint point = new(Power.FromWatts(100), Duration.FromMinutes(5));
        Assert.Equal("runtimes", Assert.Throws<ArgumentException>(() => new UninterruptibleSupply("unit", ElectricApparentPower.FromVoltamperes(1), Power.FromWatts(1), [])).ParamName);
        Assert.Equal("runtimes", Assert.Throws<ArgumentException>(() => new UninterruptibleSupply("unit", ElectricApparentPower.FromVoltamperes(1), Power.FromWatts(1), [point, point])).ParamName);
        Assert.Equal("load", Assert.Throws<ArgumentOutOfRangeException>(() => new RuntimePoint(Power.FromWatts(0), Duration.FromMinutes(5))).ParamName);
    }

    internal static UninterruptibleSupply Unit(double voltamperes = 600, double? crest = 3, double? wanted = null, double watts = 360) => new("unit",
        ElectricApparentPower.FromVoltamperes(voltamperes), Power.FromWatts(watts),
        [new RuntimePoint(Power.FromWatts(100), Duration.FromMinutes(30)), new RuntimePoint(Power.FromWatts(200), Duration.FromMinutes(10))], crest,
        wanted is double minutes ? Duration.FromMinutes(minutes) : null);

    /// <summary>A unit that gives some watts for a minute.</summary>
    internal static UninterruptibleSupply ForAMinute(double watts, double wantedSeconds) => new("unit", ElectricApparentPower.FromVoltamperes(600), Power.FromWatts(360),
        [new RuntimePoint(Power.FromWatts(watts), Duration.FromMinutes(1))], 3, Duration.FromSeconds(wantedSeconds));

    /// <summary>One camera of constant current on a box of 12 V, behind a unit of 120 V.</summary>
    internal static Site Behind(UninterruptibleSupply unit, double amperes)
    {
        SupplyInput sheet = Receptacles.Sheet().Input!;
        var input = new SupplyInput(efficiency: sheet.Efficiency, powerFactor: sheet.PowerFactor, crestFactor: 2.8);
        var receptacle = new Receptacle("receptacle", Volts(120), ElectricCurrent.FromAmperes(15), uninterruptible: unit);
        return Star(Box(new Supply("supply", Dc(12, 10).Output, Derating.GenericEnclosed, input)).WithReceptacle(receptacle), [Condition.Day(At())],
            (0, Camera(Amperes(amperes))));
    }
}
