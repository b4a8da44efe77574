using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>A chain of cameras on one pair, and the voltage along runs and chains.</summary>
public class CameraChainTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    private static readonly Load Third = Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.3));

    // By hand: 1.257 Ω a link carry 0.9, 0.6 and 0.3 A: 12 − 1.1313 − 0.7542 − 0.3771 V.
    [Fact]
    public void Feed_ThreeEqualCurrents()
    {
        ChainResult result = Chain(12, Third, Third, Third);
        Assert.Equal([10.8687, 10.1145, 9.7374], result.Taps.Select(t => Math.Round(t.LoadVoltage.Volts, 9)));
        Assert.Equal([0.9, 0.6, 0.3], result.Taps.Select(t => Math.Round(t.SegmentCurrent.Amperes, 12)));
        Assert.Equal(0.9, result.TotalCurrent.Amperes, 1e-12);
        Assert.Null(result.MarginToCollapse);
    }

    // A chain of one is a run: the closed form.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 500)]
    public void Feed_ChainOfOne_IsTheRun(FeedCase c)
    {
        ChainResult chain = new CameraChain(new ChainLink(Runs.OfOhms(c.Ohms), c.Load)).Feed(ElectricPotential.FromVolts(c.Volts), Twenty);
        RunResult run = c.Feed();
        Assert.Equal(run.HasOperatingPoint, chain.HasOperatingPoint);
        if (run.MarginToCollapse is Ratio margin) Assert.Equal(margin.DecimalFractions, chain.MarginToCollapse!.Value.DecimalFractions, 1e-8 * margin.DecimalFractions);
        if (run.HasOperatingPoint) Assert.Equal(run.LoadVoltage.Volts, chain.Taps[0].LoadVoltage.Volts, 1e-9 * c.Volts);
    }

    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 500)]
    public void Feed_BalancesPowerAndKirchhoffAtEveryCamera(FeedCase c)
    {
        var chain = new CameraChain(new ChainLink(Runs.OfOhms(c.Ohms / 4), c.Load), new ChainLink(Runs.OfOhms(c.Ohms / 16), Load.None)).Then(new ChainLink(Runs.OfOhms(c.Ohms / 64), c.Load));
        ChainResult result = chain.Feed(ElectricPotential.FromVolts(c.Volts), Twenty);
        if (!result.HasOperatingPoint)
        {
            Assert.Throws<InvalidOperationException>(() => result.Taps);
            Assert.Throws<InvalidOperationException>(() => result.Profile());
            return;
        }

        Assert.Equal((double)result.SourcePower.Watts, (double)result.LoadPower.Watts + (double)result.Loss.Watts, 1e-8 * c.Volts * c.Volts / c.Ohms);
        Assert.Equal(0, result.Taps[1].LoadCurrent.Amperes);
        Assert.Equal(result.Taps[1].SegmentCurrent.Amperes, result.Taps[2].SegmentCurrent.Amperes);
        Assert.All(result.Taps, t => Assert.Equal(c.Volts, t.LoadVoltage.Volts + t.Drop.Volts, 1e-8 * c.Volts));
        Assert.Equal([.. result.Taps.Select(t => t.LoadVoltage.Volts)], result.Profile().Points.Where((_, i) => i > 0 && i % 2 == 0).Select(p => p.Voltage.Volts), Within(1e-8 * c.Volts));
    }

    // Three cameras of 6 W, 2 Ω apart: together 18 W over 2 Ω alone would be the limit of 12 V, so beyond the first they cannot stand.
    [Fact]
    public void Feed_TooManyCameras_SaysHowMuchLessWouldDo()
    {
        Load six = Load.ConstantPower(Power.FromWatts(6));
        CameraChain chain = new(Enumerable.Repeat(new ChainLink(Runs.OfOhms(2), six), 3).ToArray());
        ChainResult result = chain.Feed(ElectricPotential.FromVolts(12), Twenty);
        Assert.False(result.HasOperatingPoint);
        double margin = result.MarginToCollapse!.Value.DecimalFractions;
        Assert.InRange(margin, 0.3, 1);
        Assert.True(Scaled(0.9999).HasOperatingPoint);
        Assert.False(Scaled(1.0001).HasOperatingPoint);

        ChainResult Scaled(double by) => new CameraChain(Enumerable.Repeat(new ChainLink(Runs.OfOhms(2), Load.ConstantPower(Power.FromWatts(6 * margin * by))), 3).ToArray())
            .Feed(ElectricPotential.FromVolts(12), Twenty);
    }

    // 30 m of 18 AWG carry 0.3 A over 1.2569 Ω; the splice of 0.1 Ω steps by 0.03 V where the cable ends.
    [Fact]
    public void Profile_FallsEvenlyAlongCable_AndStepsAtAJoint()
    {
        CableRun run = new CableRun(Runs.Eighteen, oneWayLength: Length.FromMeters(30)).Then(new Joint("splice", ElectricResistance.FromOhms(0.1)))
            .Then(new CableSegment(Runs.Eighteen, oneWayLength: Length.FromMeters(10)));
        RunResult fed = run.Feed(Third, ElectricPotential.FromVolts(12), Twenty);
        VoltageProfile profile = fed.Profile();
        double perMeter = 0.3 * Runs.Eighteen.LoopResistancePerLengthAt(Twenty).OhmsPerMeter;
        Assert.Equal([0, 30, 30, 40], profile.Points.Select(p => p.Distance.Meters));
        Assert.Equal([12, 12 - (30 * perMeter), 11.97 - (30 * perMeter), 11.97 - (40 * perMeter)], profile.Points.Select(p => p.Voltage.Volts), Within(1e-12));
        Assert.Equal(12 - (12 * perMeter), At(12), 1e-12);
        Assert.Equal(11.97 - (30 * perMeter), At(30), 1e-12);
        Assert.Equal(11.97 - (35 * perMeter), At(35), 1e-12);
        Assert.Equal(fed.LoadVoltage.Volts, At(40), 1e-12);
        Assert.Null(profile.Points[0].After);
        Assert.Same(run.Parts[1], profile.Points[2].After);
        Assert.Throws<ArgumentOutOfRangeException>(() => profile.VoltageAt(Length.FromMeters(40.001)));

        double At(double meters) => profile.VoltageAt(Length.FromMeters(meters)).Volts;
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 500)]
    public void Profile_EndsAtTheLoad(LimitCase c)
    {
        RunResult fed = c.Run.Feed(c.Load, c.From, c.At);
        if (!fed.HasOperatingPoint) return;
        VoltageProfile profile = fed.Profile();
        Assert.Equal(fed.LoadVoltage.Volts, profile.VoltageAt(fed.OneWayLength).Volts, 1e-9 * c.Volts);
        Assert.Equal(fed.LoadVoltage.Volts, profile.Points[^1].Voltage.Volts, 1e-9 * c.Volts);
        Assert.Equal(profile.Points.Select(p => p.Voltage.Volts).OrderDescending(), profile.Points.Select(p => p.Voltage.Volts));
    }

    private static Func<double, double, bool> Within(double tolerance) => (a, b) => Math.Abs(a - b) <= tolerance;

    private static ChainResult Chain(double volts, params Load[] loads) =>
        new CameraChain([.. loads.Select(l => new ChainLink(Runs.OfOhms(1.257), l))]).Feed(ElectricPotential.FromVolts(volts), Twenty);
}
