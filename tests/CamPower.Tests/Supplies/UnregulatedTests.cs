using System;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Supplies;

public class UnregulatedTests
{
    // The two points of the data sheet hold exactly, on both sides.
    [Fact]
    public void Voltages_AtItsTwoPoints_AreTheirs()
    {
        DcOutput output = Output(19.2, 12, 1);
        Assert.Equal((19.2, 19.2), Ends(output, 0));
        (double low, double high) = Ends(output, 1);
        Assert.Equal(12, low, 1e-9);
        Assert.Equal(12, high, 1e-9);
    }

    // By hand: half way the line has 15.6 V, and the mains may be 10 % higher: 17.16 V.
    [Fact]
    public void HighSide_IsTheLineWithTheMainsTolerance() => Assert.Equal(17.16, Ends(Output(19.2, 12, 1, tolerance: 10), 0.5).High, 1e-9);

    // Written apart from the library: the half wave of a rectifier with a crest of 20 V behind 1 Ω, integrated in 200,000 steps while it is above the voltage of the capacitor.
    [Theory]
    [InlineData(14, 16)]
    [InlineData(14, 18.5)]
    [InlineData(17, 19.5)]
    [InlineData(10, 11)]
    public void LowSide_IsARectifierWithAnEndlessCapacitor(double ratedVolts, double volts)
    {
        DcOutput output = Output(20, ratedVolts, Integrated(ratedVolts));
        Assert.Equal(volts, Ends(output, Integrated(volts)).Low, 1e-4);

        static double Integrated(double capacitor)
        {
            const int steps = 200_000;
            double sum = 0;
            for (int i = 0; i < steps; i++) sum += Math.Max(0, (20 * Math.Sin(Math.PI * (i + 0.5) / steps)) - capacitor);
            return sum / steps;
        }
    }

    // Schade, 1943, full wave, Rs/RL = 10 % and an endless capacitor: about three quarters of the crest (the chart from memory). By hand: V = I·RL
    // makes it tan θ - θ = (π/2)·Rs/RL = 0.1571; θ = 0.720, cos θ = 0.7518. Crest 10 V, 1 Ω and 10 Ω: 0.7518 A. Its rated point is another
    // one of the same rectifier: 5 V at 2/π·10·(sin 60° - π/3·cos 60°) = 2.1797 A.
    [Fact]
    public void LowSide_MeetsTheEquationOfARectifierOnAResistor() => Assert.Equal(7.518, Ends(Output(10, 5, 2.1797), 0.7518).Low, 0.005);

    // The chord of a convex curve is nowhere below it.
    [Fact]
    public void LowSide_IsNowhereAboveTheHighSide_AndBothFallWithTheCurrent()
    {
        foreach (double open in new[] { 12.5, 16, 24 })
        {
            DcOutput output = Output(open, 12, 2, tolerance: 6, ripple: 2);
            (double low, double high)[] ends = [.. Enumerable.Range(0, 41).Select(i => Ends(output, i / 20.0))];
            Assert.All(ends, e => Assert.True(e.low <= e.high));
            Assert.All(ends.Zip(ends.Skip(1)), pair => Assert.True(pair.Second.low < pair.First.low));
        }
    }

    // A sawtooth of 2 % RMS goes √3·2 % up and down, at the rated current: 12 V · 0.9654.
    [Fact]
    public void Ripple_LowersTheLowSideToItsValley() => Assert.Equal(12 * (1 - (Math.Sqrt(3) * 0.02)), Ends(Output(16, 12, 1, ripple: 2), 1).Low, 1e-9);

    // 12.00 V unloaded was a false all-clear: it is 19.2 V, and 21.12 V with the mains 10 % high.
    [Fact]
    public void Unloaded_ItHasItsOpenVoltage()
    {
        DeviceAssessment camera = Fed(Output(19.2, 12, 1, tolerance: 10), Camera(Amperes(0.5), Range(8, 14))).Assess().Devices[0];
        Assert.Equal(21.12, camera.NoLoadVoltage.Volts, 1e-9);
        Assert.Equal(17.16, camera.LightLoadVoltage.Volts, 1e-6);
        Finding finding = Rules.OvervoltageAtLightLoad.Check(new Evidence(Fed(Output(19.2, 12, 1, tolerance: 10), Camera(Amperes(0.5), Range(8, 14))).Assess())).Single();
        Assert.Contains("regulated supply", finding.Remedy, StringComparison.Ordinal);
    }

    // A camera of constant power settles where what it draws is what lowers the voltage to that: V·I = P on the low side.
    [Theory]
    [InlineData(3)]
    [InlineData(9)]
    [InlineData(12 * 0.9)]
    public void ConstantPower_SettlesOnTheLowSide(double watts)
    {
        DcOutput output = Output(19.2, 12, 1, tolerance: 10);
        SiteAssessment assessed = Fed(output, Camera(Watts(watts))).Assess();
        double volts = assessed.Devices[0].InConditions[0].Voltage.Volts;
        Assert.Equal(Ends(output, watts / volts).Low, volts, 1e-5);
        Assert.Equal(watts / volts, assessed.Boxes[0].InConditions[0].TotalCurrent.Amperes, 1e-5);
        Assert.Equal(volts, assessed.Boxes[0].InConditions[0].SupplyVoltage!.Value.Volts, 1e-5);
    }

    // The load of one output lowers the voltage of every other one.
    [Fact]
    public void EveryOutput_HasTheVoltageThatAllLeave()
    {
        DcOutput output = Output(16, 12, 1);
        SiteAssessment assessed = Star(Box(new Supply("supply", output, Derating.GenericEnclosed)), [Condition.Day(At())], (0, Camera(Amperes(0.2))), (0, Camera(Amperes(0.5)))).Assess();
        Assert.All(assessed.Devices, d => Assert.Equal(Ends(output, 0.7).Low, d.InConditions[0].Voltage.Volts, 1e-6));
    }

    // At light load, too: 0.2 A and 0.5 A leave every device what 0.7 A leave.
    [Fact]
    public void EveryOutput_HasTheLightLoadOfAll()
    {
        DcOutput output = Output(16, 12, 1, tolerance: 5);
        SiteAssessment assessed = Star(Box(new Supply("supply", output, Derating.GenericEnclosed)), [Condition.Day(At())], (0, Camera(Amperes(0.2))), (0, Camera(Amperes(0.5)))).Assess();
        Assert.All(assessed.Devices, d => Assert.Equal(Ends(output, 0.7).High, d.LightLoadVoltage.Volts, 1e-6));
    }

    // Constant power settles in steps, in every condition until none moves: V·I = P on the low side, by day and at night, in both orders.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void EveryCondition_SettlesByItself(bool isDayFirst)
    {
        DcOutput output = Output(19.2, 12, 1, tolerance: 10);
        Condition day = Condition.Day(At()), night = Condition.Night(At());
        DeviceAssessment camera = Star(Box(new Supply("supply", output, Derating.GenericEnclosed)), isDayFirst ? [day, night] : [night, day],
            (2, Camera(new ComponentDraw(Watts(3), infrared: Watts(5))))).Assess().Devices[0];
        foreach (DeviceInCondition found in camera.InConditions)
        {
            double watts = found.Condition == day ? 3 : 8, amperes = watts / found.Voltage.Volts;
            Assert.Equal(Ends(output, amperes).Low - (2 * amperes), found.Voltage.Volts, 1e-5);
        }
    }

    // A day with little and a night with much: each condition has its own voltage.
    [Fact]
    public void EachCondition_HasItsOwnVoltage()
    {
        DcOutput output = Output(16, 12, 1);
        DeviceAssessment camera = Star(Box(new Supply("supply", output, Derating.GenericEnclosed)), [Condition.Day(At()), Condition.Night(At())],
            (0, Camera(new ComponentDraw(Amperes(0.1), infrared: Amperes(0.8))))).Assess().Devices[0];
        Assert.Equal(Ends(output, 0.1).Low, camera.InConditions[0].Voltage.Volts, 1e-6);
        Assert.Equal(Ends(output, 0.9).Low, camera.InConditions[1].Voltage.Volts, 1e-6);
    }

    // 108 V of a line of 120 V are nine tenths of everything, and 132 V eleven tenths, whatever the mains may do otherwise.
    [Fact]
    public void StatedLine_MovesTheVoltageInsteadOfTheTolerance()
    {
        DcOutput output = Output(19.2, 12, 1, tolerance: 5);
        DistributionBox box = Box(new Supply("supply", output, Derating.GenericEnclosed))
            .WithReceptacle(new Receptacle("receptacle", Volts(120), ElectricCurrent.FromAmperes(15)));
        DeviceAssessment camera = Star(box, [Condition.Day(At()).WithLineVoltage(Volts(108)), Condition.Night(At()).WithLineVoltage(Volts(132))],
            (0, Camera(Amperes(0.5)))).Assess().Devices[0];
        Assert.Equal(0.9 * Ends(Output(19.2, 12, 1), 0.5).Low, camera.InConditions[0].Voltage.Volts, 1e-6);
        Assert.Equal(1.1 * Ends(Output(19.2, 12, 1), 0.5).Low, camera.InConditions[1].Voltage.Volts, 1e-6);
        Assert.Equal(1.1 * 19.2, camera.NoLoadVoltage.Volts, 1e-9);
        Assert.Equal(1.1 * 15.6, camera.LightLoadVoltage.Volts, 1e-6);
    }

    // Asked for more than it is rated for it is overloaded: without a word on that nothing is known, without a limit it follows the line on down.
    [Fact]
    public void AboveItsRating_ItIsOverloaded()
    {
        Assert.Equal(SupplyState.Unknown, Fed(Output(16, 12, 1), Camera(Amperes(1.2))).Assess().Boxes[0].InConditions[0].SupplyState);
        DcOutput unlimited = DcOutput.OfUnregulated(Volts(16), Volts(12), ElectricCurrent.FromAmperes(1), Ratio.Zero, overload: OverloadBehavior.Unlimited);
        BoxInCondition box = Fed(unlimited, Camera(Amperes(1.2), Range(5, 30), Starts(6, 5))).Assess().Boxes[0].InConditions[0];
        Assert.Equal(SupplyState.Dips, box.SupplyState);
        Assert.Equal(16 - (4 * 1.2), box.SupplyVoltage!.Value.Volts, 1e-6);
    }

    [Fact]
    public void Explain_EvaluatesToItsAnswer()
    {
        DcOutput output = Output(16, 12, 1, tolerance: 10, ripple: 1);
        Derivation working = output.ExplainVoltageAt(ElectricCurrent.FromAmperes(0.4));
        Assert.Equal(14.4, working.Steps[0].Value, 1e-9);
        Assert.Equal(0.4, working.Steps[2].Value, 1e-9);
        Assert.Equal(Ends(output, 0.4), (working.Steps[5].Value, working.Steps[4].Value));
        Assert.Throws<InvalidOperationException>(() => Regulated().ExplainVoltageAt(ElectricCurrent.FromAmperes(0.4)));
    }

    [Fact]
    public void Unregulated_ChargesNoBattery()
    {
        Assert.Throws<InvalidOperationException>(() => Output(16, 12, 1).WithCharging(Volts(0), ElectricCurrent.FromAmperes(1)));
        Assert.Throws<InvalidOperationException>(() => Box(new Supply("supply", Output(16, 12, 1), Derating.GenericEnclosed)).WithBattery(BatteryCatalog.Generic12Volt[0]));
    }

    [Theory]
    [InlineData(12, 12, 0, "open")]
    [InlineData(121, 12, 0, "open")]
    [InlineData(16, 0, 0, "nominal")]
    [InlineData(16, 12, 51, "ripple")]
    public void OfUnregulated_RefusesWhatNoneIs(double open, double rated, double ripple, string parameter) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(() => Output(open, rated, 1, ripple: ripple)).ParamName);

    private static DcOutput Regulated() => new(Volts(12), ElectricCurrent.FromAmperes(1), Ratio.Zero);

    private static DcOutput Output(double open, double rated, double amperes, double tolerance = 0, double ripple = 0) => DcOutput.OfUnregulated(
        Volts(open), Volts(rated), ElectricCurrent.FromAmperes(amperes), Ratio.FromPercent(tolerance), Ratio.FromPercent(ripple));

    private static (double Low, double High) Ends(DcOutput output, double amperes)
    {
        ElectricCurrent current = ElectricCurrent.FromAmperes(amperes);
        return (output.LowestVoltageAt(current).Volts, output.HighestVoltageAt(current).Volts);
    }

    private static Site Fed(DcOutput output, Device device) =>
        Star(Box(new Supply("supply", output, Derating.GenericEnclosed)), [Condition.Day(At())], (0, device));
}
