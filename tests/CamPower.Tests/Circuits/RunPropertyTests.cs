using System;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>What holds for every run, source and load.</summary>
public class RunPropertyTests
{
    // A wrong root balances power too, so the branch is claimed beside it. A loop taken once instead of twice would pass
    // here: the reference values and RunGeometryTests rule that out.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 2000)]
    public void Feed_BalancesPowerOnTheStableBranch(FeedCase c)
    {
        RunResult result = c.Feed();
        if (!result.TryGetOperatingPoint(out OperatingPoint point)) return;

        double v = point.Voltage.Volts, i = point.Current.Amperes;
        Assert.Equal(c.Amperes(v), i, 1e-12 * i);
        Assert.Equal(c.Volts, v + (i * c.Ohms), 1e-9 * c.Volts);
        Assert.Equal((double)result.SourcePower.Watts, (double)result.LoadPower.Watts + (double)result.Loss.Watts, 1e-9 * c.Volts * c.Volts / c.Ohms);
        Assert.Equal(result.SourceVoltage.Volts, result.LoadVoltage.Volts + result.Drop.Volts, 1e-9 * c.Volts);
        Assert.Equal(result.Drop.Volts / c.Volts, result.DropRatio.DecimalFractions, 1e-12);

        // Where a little more voltage at the load brings more current through the run than it draws, a point does not last.
        double nudged = v * 1.0001;
        Assert.True((c.Volts - nudged) / c.Ohms < c.Amperes(nudged), c.ToString());
    }

    // The search knows neither the discriminant nor the roots. A rule without Vs > R·I₀ fails on current components above 1.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 1500)]
    public void Feed_HasAnOperatingPointWhereASearchFindsOne(FeedCase c)
    {
        double searched = c.Searched();
        RunResult result = c.Feed();
        Assert.Equal(searched > 0, result.HasOperatingPoint);
        if (searched > 0) Assert.Equal(searched, result.LoadVoltage.Volts, 1e-9 * c.Volts);
    }

    // The discriminant is positive and both roots are negative voltages: 144 − 4·10·… with a = 12 − 10·2 = −8, D = 64 − 40 = 24.
    [Fact]
    public void Feed_CurrentComponentTakesAllTheVoltage_IsNoOperatingPoint()
    {
        var trap = new FeedCase(12, 10, Load.ConstantPower(Power.FromWatts(1)) + Load.ConstantCurrent(ElectricCurrent.FromAmperes(2)));
        Assert.True(RunKernel.Discriminant(-8, 10, 1) > 0);
        Assert.Equal(0, trap.Searched());
        Assert.False(trap.Feed().HasOperatingPoint);
        Assert.Equal(RunKernel.NoOperatingPoint, RunKernel.LoadVolts(12, 10, 1, 2, 0));
        Assert.Equal(0, (double)trap.Feed().MaximumPower!.Value.Watts);
    }

    // 0.8 W beside 1 A over 10 Ω from 12 V: the current alone leaves 12 − 10·1 = 2 V and so carries 2 W, less than the 3.6 W of
    // the matched load, which the current never lets it reach.
    [Fact]
    public void MaximumPower_OfALargerOfLoad_IsWhatItsCurrentCarries()
    {
        var c = new FeedCase(12, 10, Load.LargerOf(Power.FromWatts(0.8), ElectricCurrent.FromAmperes(1)));
        Assert.Equal(2, c.Feed().LoadVoltage.Volts);
        Assert.Equal(2, (double)c.Feed().MaximumPower!.Value.Watts);
    }

    [Fact]
    public void MarginToCollapse_WhereNothingCanCollapse_IsNull()
    {
        Assert.Null(new FeedCase(12, 10, Load.ConstantCurrent(ElectricCurrent.FromAmperes(1))).Feed().MarginToCollapse);
        Assert.Null(new FeedCase(12, 0, Load.ConstantPower(Power.FromWatts(1))).Feed().MarginToCollapse);
        Assert.Equal(0, new FeedCase(12, 10, Load.ConstantCurrent(ElectricCurrent.FromAmperes(2))).Feed().MarginToCollapse!.Value.DecimalFractions);
    }

    // 1 exactly at the limit, less beyond it: with the power component brought just under the most, a point exists; just over, none.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 1000)]
    public void MaximumPower_IsWhereTheOperatingPointEnds(FeedCase c)
    {
        RunResult result = c.Feed();
        double most = (double)result.MaximumPower!.Value.Watts;
        if (most > 0)
        {
            Assert.True(c.Feed(WithPower(c.Load, most * (1 - 1e-9))).HasOperatingPoint, c.ToString());
        }

        if (most > 0 || c.Load.Watts > 0) Assert.False(c.Feed(WithPower(c.Load, (most * (1 + 1e-9)) + 1e-12)).HasOperatingPoint, c.ToString());
        if (c.Load.Watts > 0)
        {
            double margin = result.MarginToCollapse!.Value.DecimalFractions;
            Assert.Equal(most / c.Load.Watts, margin, 1e-9 * margin);
            Assert.Equal(result.HasOperatingPoint, margin >= 1);
        }
    }

    // A product of roots taken from the wrong pair fails on larger-of loads that their current component sets.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 1000)]
    public void UnstableVoltage_IsTheOtherBalance(FeedCase c)
    {
        if (!c.Feed().HasOperatingPoint || c.Load.Watts == 0) return;
        double unstable = c.Feed().UnstableVoltage.Volts;
        Assert.Equal(LoadLine.LowestVoltage(c.Volts, c.Ohms, c.Amperes), unstable, 1e-9 * c.Volts);
        Assert.True(unstable <= c.Feed().LoadVoltage.Volts);
    }

    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 1000)]
    public void LargerOf_DrawsThePointwiseMaximum(FeedCase c)
    {
        var larger = Load.LargerOf(Power.FromWatts(c.Load.Watts), ElectricCurrent.FromAmperes(c.Load.Amperes));
        for (int step = 1; step <= 50; step++)
        {
            double volts = c.Volts * step / 50;
            double expected = Math.Max(larger.Watts / volts, larger.Amperes);
            Assert.Equal(expected, larger.CurrentAt(ElectricPotential.FromVolts(volts)).Amperes, 1e-12 * expected);
        }
    }

    // A larger-of load never gets more voltage than either of its shares alone would leave it.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 1000)]
    public void LargerOf_GetsTheLowerOfTheTwoVoltages(FeedCase c)
    {
        var power = Load.ConstantPower(Power.FromWatts(c.Load.Watts));
        var current = Load.ConstantCurrent(ElectricCurrent.FromAmperes(c.Load.Amperes));
        RunResult larger = c.Feed(Load.LargerOf(power.PowerComponent, current.CurrentComponent));
        if (!larger.HasOperatingPoint) return;
        Assert.Equal(Math.Min(c.Feed(power).LoadVoltage.Volts, c.Feed(current).LoadVoltage.Volts), larger.LoadVoltage.Volts, 1e-12 * c.Volts);
    }

    // By powers of two the arithmetic itself scales, so the bits must agree: no hidden constant has a unit.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 1000)]
    public void LoadVolts_ScalesWithSourceAndResistance_ToTheBit(FeedCase c)
    {
        double v = RunKernel.LoadVolts(c.Volts, c.Ohms, c.Load.Watts, c.Load.Amperes, c.Load.Siemens);
        foreach (double k in new[] { 0.125, 0.5, 2, 16 })
        {
            Assert.Equal(k * v, RunKernel.LoadVolts(k * c.Volts, c.Ohms, k * k * c.Load.Watts, k * c.Load.Amperes, c.Load.Siemens));
            Assert.Equal(v, RunKernel.LoadVolts(c.Volts, k * c.Ohms, c.Load.Watts / k, c.Load.Amperes / k, c.Load.Siemens / k));
        }
    }

    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 500)]
    public void Feed_OfALoadInShares_EqualsTheWhole(FeedCase c)
    {
        if (c.Load.IsLargerOf) return;
        Load quarter = Scaled(c.Load, 0.25), half = Scaled(c.Load, 0.5);
        RunResult whole = c.Feed(Scaled(c.Load, 1)), added = c.Feed(quarter + half + quarter);
        Assert.Equal(whole.HasOperatingPoint, added.HasOperatingPoint);
        if (whole.HasOperatingPoint) Assert.Equal(whole.LoadVoltage.Volts, added.LoadVoltage.Volts, 1e-6 * c.Volts);

        var draw = new ComponentDraw(quarter, infrared: half, heater: quarter, motor: c.Load);
        Load on = draw.LoadWith(LoadComponents.Infrared | LoadComponents.Heater);
        Assert.Equal(added.Load.Watts, on.Watts);
        Assert.Equal(added.Load.Amperes, on.Amperes);
        Assert.Equal(added.Load.Siemens, on.Siemens);
    }

    private static Load WithPower(Load load, double watts)
    {
        var power = Power.FromWatts(watts);
        return load.IsLargerOf ? Load.LargerOf(power, load.CurrentComponent) : Rest(load, 1) + Load.ConstantPower(power);
    }

    private static Load Scaled(Load load, double by) => Rest(load, by) + Load.ConstantPower(Power.FromWatts(by * load.Watts));

    private static Load Rest(Load load, double by)
    {
        var current = Load.ConstantCurrent(ElectricCurrent.FromAmperes(by * load.Amperes));
        return load.Siemens > 0 ? current + Load.ConstantResistance(ElectricResistance.FromOhms(1 / (by * load.Siemens))) : current;
    }
}
