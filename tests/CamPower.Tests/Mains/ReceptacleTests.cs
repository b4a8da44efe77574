using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Mains;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Mains;

public class ReceptacleTests
{
    // Reference rows S10-011 (seen in texts quoting NEC Table 210.21(B)(2)), S10-012 and S10-013 (from memory).
    [Theory]
    [InlineData(15, 12)]
    [InlineData(20, 16)]
    [InlineData(30, 24)]
    public void MaximumCurrent_IsThatOfTheTable(double rating, double most) =>
        Assert.Equal(most, Receptacles.Rated(rating).MaximumCurrent.Amperes, 1e-12);

    // Reference row S10-014, derived: 12 A x 120 V.
    [Fact]
    public void MaximumCurrent_AtTheNominalVoltage_IsThePowerOfTheTradesRule()
    {
        Receptacle receptacle = Receptacles.Rated(15);
        Assert.Equal(1440, receptacle.MaximumCurrent.Amperes * receptacle.Voltage.Volts, 1e-9);
    }

    [Fact]
    public void MaximumCurrent_OfAnotherShare_IsThatShare() =>
        Assert.Equal(16, new Receptacle("socket", Volts(230), ElectricCurrent.FromAmperes(16), Ratio.FromPercent(100)).MaximumCurrent.Amperes);

    // Reference row S10-020: 120 W / (0.85 x 0.95 x 120 V); it prints 1.239 A, its formula gives 1.2384 A.
    [Fact]
    public void LineDraw_IsPowerOutOverEfficiencyPowerFactorAndVoltage()
    {
        LineDraw draw = Receptacles.Plugged(amperes: 10).Assess().StudyReceptacles()[0].Worst.Draws[0];
        Assert.Equal(120 / 0.85, (double)draw.Power!.Value.Watts, 1e-9);
        Assert.Equal(120 / 0.85 / 0.95, draw.ApparentPower!.Value.Voltamperes, 1e-9);
        Assert.Equal(1.2384, draw.Current!.Value.Amperes, 5e-5);
        Derivation working = draw.Explain();
        Assert.Equal([120, 120 / 0.85, 120 / 0.85 / 0.95, draw.Current.Value.Amperes], working.Steps.Select(s => s.Value), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    // The tolerance of the supply counts: what it gives at its highest voltage is the most that it takes.
    [Fact]
    public void LineDraw_CountsTheHighestVoltageOfTheSupply() =>
        Assert.Equal(12.6 * 10 / 0.85 / 0.95 / 120, Receptacles.Plugged(amperes: 10, percent: 5).Assess().StudyReceptacles()[0].Worst.Current!.Value.Amperes, 1e-9);

    [Fact]
    public void LineVoltage_IsTheConditionsWhereItStatesOne_AndALowOneTakesMore()
    {
        var low = new Condition("brownout", LoadComponents.None, At(), lineVoltage: Volts(100));
        ReceptacleAssessment receptacle = Receptacles.Plugged(amperes: 10, conditions: [Condition.Day(At()), low]).Assess().StudyReceptacles()[0];
        Assert.Equal([120, 100], receptacle.InConditions.Select(c => c.LineVoltage.Volts));
        Assert.Same(low, receptacle.Worst.Condition);
        Assert.Equal(1.2 * receptacle.InConditions[0].Current!.Value.Amperes, receptacle.Worst.Current!.Value.Amperes, 1e-12);
    }

    // Nothing is plugged in by half: below the first point of the curves the draw is that of the first point.
    [Fact]
    public void LineDraw_BelowTheFirstPointOfItsCurves_IsThatOfTheFirstPoint()
    {
        double At(double amperes) => Receptacles.Plugged(amperes, curvesFrom: 20).Assess().StudyReceptacles()[0].Worst.Current!.Value.Amperes;
        Assert.Equal(At(2), At(0.5), 1e-12);
        Assert.True(At(2.1) > At(2));
    }

    [Fact]
    public void LineDraw_OfUnknownEfficiencyOrPowerFactor_IsUnknownAndSaysSo()
    {
        LineDraw bare = Receptacles.Plugged(amperes: 1, Dc(amperes: 10)).Assess().StudyReceptacles()[0].Worst.Draws[0];
        Assert.Null(bare.Power);
        Assert.Contains("efficiency and power factor", bare.ToString(), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(bare.Explain);

        ReceptacleInCondition half = Receptacles.Plugged(amperes: 1, Dc(amperes: 10).WithEfficiency(0.9)).Assess().StudyReceptacles()[0].Worst;
        Assert.Equal(12 / 0.9, (double)half.Draws[0].Power!.Value.Watts, 1e-9);
        Assert.Null(half.Current);
        Assert.DoesNotContain("efficiency", half.Draws[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void StudyReceptacles_AddsTheBoxesOfAnReceptacle_AndKeepsReceptaclesApart()
    {
        Receptacle one = Receptacles.Rated(15), other = Receptacles.Rated(15, "other");
        Site site = Receptacles.Boxes((one, 4), (other, 3), (one, 2), (null, 5));
        IReadOnlyList<ReceptacleAssessment> receptacles = site.Assess().StudyReceptacles();
        Assert.Equal([one, other], receptacles.Select(o => o.Receptacle));
        double PerAmpere() => 12 / 0.85 / 0.95 / 120;
        Assert.Equal(6 * PerAmpere(), receptacles[0].Worst.Current!.Value.Amperes, 1e-12);
        Assert.Equal(3 * PerAmpere(), receptacles[1].Worst.Current!.Value.Amperes, 1e-12);
    }

    // One box whose draw is not known hides nothing of the others'.
    [Fact]
    public void KnownCurrent_IsTheLeastThatIsPluggedIn()
    {
        Receptacle receptacle = Receptacles.Rated(15);
        DistributionBox known = Box(Receptacles.Sheet()).WithReceptacle(receptacle), unknown = Box(Dc()).WithName("unknown").WithReceptacle(receptacle);
        ReceptacleInCondition worst = new Site("site", [Condition.Day(At())], [known, unknown], [], []).Assess().StudyReceptacles()[0].Worst;
        Assert.Null(worst.Current);
        Assert.Equal(worst.Draws[0].Current, worst.KnownCurrent);
    }

    [Fact]
    public void Site_RefusesTwoReceptaclesOfOneName()
    {
        var refused = Assert.Throws<ArgumentException>(() => Receptacles.Boxes((Receptacles.Rated(15), 1), (Receptacles.Rated(20), 1)));
        Assert.Contains("another receptacle is named receptacle already", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 15, 80, "voltage")]
    [InlineData(1001, 15, 80, "voltage")]
    [InlineData(120, 0, 80, "rating")]
    [InlineData(120, 15, 0, "share")]
    [InlineData(120, 15, 101, "share")]
    public void Receptacle_RefusesWhatNoneIs(double volts, double amperes, double percent, string parameter) => Assert.Equal(parameter,
        Assert.Throws<ArgumentOutOfRangeException>(() => new Receptacle("receptacle", Volts(volts), ElectricCurrent.FromAmperes(amperes), Ratio.FromPercent(percent))).ParamName);

    [Fact]
    public void PluggedInto_KeepsTheRestOfTheBox()
    {
        DistributionBox box = Box(), plugged = box.WithReceptacle(Receptacles.Rated(15));
        Assert.Same(box.Supply, plugged.Supply);
        Assert.Same(plugged.Receptacle, plugged.WithName("other").Receptacle);
        Assert.Null(box.Receptacle);
    }
}
