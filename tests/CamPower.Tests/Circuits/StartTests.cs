using System;
using UnitsNet;

namespace CamPower.Tests.Circuits;

public class StartTests
{
    // By hand: 12 V, 2.6 Ω, 12.5 W: D = 144 − 4·2.6·12.5 = 14, V = (12 + √14)/2 = 7.871 V, under an 8 V drop-out. The lower
    // root is (12 − √14)/2 = 4.129 V.
    [Theory]
    [InlineData(12, 12.5, 9.5, 8, false, StartVerdict.SettlesBelowDropOut)]
    [InlineData(12, 12.5, 9.5, 8, true, StartVerdict.SettlesBelowDropOut)]
    [InlineData(12, 12.5, 9.5, 7.8, false, StartVerdict.Starts)]
    [InlineData(12, 13.9, 9.5, 1, true, StartVerdict.SettlesBelowDropOut)]
    [InlineData(12, 12.5, 12.1, 8, true, StartVerdict.UnloadedBelowTurnOn)]
    [InlineData(12, 12.5, 12, 7.8, true, StartVerdict.Starts)]
    [InlineData(12, 12.5, 4.0, 3, false, StartVerdict.TurnOnBelowUnstableVoltage)]
    [InlineData(12, 12.5, 4.0, 3, null, StartVerdict.TurnOnBelowUnstableVoltage)]
    [InlineData(12, 12.5, 4.0, 3, true, StartVerdict.Starts)]
    [InlineData(12, 12.5, 4.2, 3, false, StartVerdict.Starts)]
    public void Start_OverTwoPointSixOhm_GivesTheReason(double source, double watts, double turnOn, double dropOut, bool? soft, StartVerdict expected)
    {
        StartResult result = Start(new FeedCase(source, 2.6, Load.ConstantPower(Power.FromWatts(watts))), turnOn, dropOut, soft);
        Assert.Equal(expected, result.Verdict);
        Assert.Equal(expected == StartVerdict.Starts, result.Starts);
        Assert.Equal(source, result.UnloadedVoltage.Volts);
    }

    [Fact]
    public void Start_DesignExample_SettlesAt787() => Assert.InRange(
        Start(new FeedCase(12, 2.6, Load.ConstantPower(Power.FromWatts(12.5))), 9.5, 8, false).AtStart.LoadVoltage.Volts, 7.865, 7.875);

    // The three reasons in words, from a search of the load line that knows neither root.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 1500)]
    public void Start_AgreesWithASearchOfTheLoadLine(FeedCase c)
    {
        double highest = LoadLine.HighestVoltage(c.Volts, c.Ohms, c.Amperes), lowest = LoadLine.LowestVoltage(c.Volts, c.Ohms, c.Amperes);
        foreach ((double on, double off) in new[] { (0.0513, 0.0211), (0.3117, 0.2071), (0.4519, 0.4137), (0.8123, 0.7057), (0.9911, 0.9039), (1.0127, 0.5073) })
        {
            double turnOn = on * c.Volts, dropOut = off * c.Volts;
            if (Math.Abs(highest - dropOut) < 1e-6 * c.Volts || Math.Abs(lowest - turnOn) < 1e-6 * c.Volts) continue;

            bool unloadedReaches = c.Volts >= turnOn, staysOn = highest >= dropOut;
            Assert.Equal(Expected(soft: true), Start(c, turnOn, dropOut, true).Verdict);
            Assert.Equal(Expected(soft: false), Start(c, turnOn, dropOut, false).Verdict);
            Assert.Equal(Expected(soft: false), Start(c, turnOn, dropOut, null).Verdict);

            StartVerdict Expected(bool soft) => !unloadedReaches ? StartVerdict.UnloadedBelowTurnOn
                : !staysOn ? StartVerdict.SettlesBelowDropOut
                : !soft && turnOn < lowest ? StartVerdict.TurnOnBelowUnstableVoltage
                : StartVerdict.Starts;
        }
    }

    private static StartResult Start(FeedCase c, double turnOn, double dropOut, bool? soft) => Runs.OfOhms(c.Ohms)
        .At(Temperature.FromDegreesCelsius(20))
        .Start(c.Load, new Starting(ElectricPotential.FromVolts(turnOn), ElectricPotential.FromVolts(dropOut), soft), from: ElectricPotential.FromVolts(c.Volts));
}
