using System;
using System.Linq;
using CamPower.Tests.Circuits;
using UnitsNet;

namespace CamPower.Tests.Working;

/// <summary>Inverse answers, starting and chains explain themselves, and the explanation is arithmetic that gives the answer.</summary>
public class LimitDerivationTests
{
    private static readonly Temperature Forty = Temperature.FromDegreesCelsius(40);

    private static readonly Starting Starting = new(ElectricPotential.FromVolts(9.5), ElectricPotential.FromVolts(8), false);

    // The last step of the question's own, its unit, and the answer in that unit.
    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1000)]
    public void Explain_AnyAnswer_EverySubstitutionGivesThePrintedValue(LimitCase c)
    {
        Check(c.Run.LongestLength(c.Load, c.From, c.Accepted, c.At), "L", v => v.Meters);
        Check(c.Run.SmallestArea(c.Load, c.From, c.Accepted, c.At), "A", v => v.SquareMillimeters);
        Check(c.Run.LargestPower(c.Load, c.From, c.Accepted, c.At), "P", v => (double)v.Watts);
        Check(c.Run.NeededSourceVoltage(c.Load, c.Accepted, c.At), "Vs", v => v.Volts);
        Check(c.Run.HighestTemperature(c.Load, c.From, c.Accepted), "T", v => v.DegreesCelsius);
        Derivation size = c.Run.SmallestSize(WireSizeSeries.Awg, c.Load, c.From, c.Accepted, c.At).Explain();
        Steps.AssertRenders(size);
        Steps.AssertEvaluate(size);
    }

    private static void Check<T>(RunAnswer<T> answer, string symbol, Func<T, double> number) where T : struct
    {
        Derivation derivation = answer.Explain();
        Steps.AssertRenders(derivation);

        Steps.AssertEvaluate(derivation);
        if (!answer.HasValue) Assert.Contains("none", derivation.Conclusion, StringComparison.Ordinal);
        bool byTheStep = answer.LimitedBy is BindingLimit.LowestVoltage or BindingLimit.LargestDrop or BindingLimit.Collapse;
        if (answer.HasValue && byTheStep)
        {
            double step = derivation.Steps.Last(s => s.Symbol == symbol || s.Symbol == symbol + "run").Value;
            Assert.Equal(step, number(answer.Value), 1e-6 * (1 + Math.Abs(step)));
        }
    }

    [Theory]
    [InlineData(12, 12.5, 9.5, 8, false)]
    [InlineData(12, 12.5, 9.5, 7.8, false)]
    [InlineData(12, 13.9, 9.5, 1, true)]
    [InlineData(12, 12.5, 12.1, 8, true)]
    [InlineData(12, 12.5, 4.0, 3, false)]
    public void Explain_Start_ComparesInNumbers(double source, double watts, double turnOn, double dropOut, bool? soft)
    {
        var starting = new Starting(ElectricPotential.FromVolts(turnOn), ElectricPotential.FromVolts(dropOut), soft);
        StartResult result = Runs.OfOhms(2.6).At(Forty).Start(Load.ConstantPower(Power.FromWatts(watts)), starting, ElectricPotential.FromVolts(source));
        Derivation derivation = result.Explain();
        Steps.AssertEvaluate(derivation);
        Steps.AssertRenders(derivation);
        Assert.Same(starting, result.Starting);
        Assert.Equal(result.Verdict == StartVerdict.UnloadedBelowTurnOn, Value("u") < 0);
        Assert.Equal(result.Starts, derivation.Conclusion.StartsWith("It starts", StringComparison.Ordinal));
        if (result.Verdict == StartVerdict.TurnOnBelowUnstableVoltage) Assert.True(Value("t") < 0);
        if (result.Verdict == StartVerdict.SettlesBelowDropOut && result.AtStart.HasOperatingPoint) Assert.True(Value("s") < 0);

        double Value(string symbol) => derivation.Steps.Single(s => s.Symbol == symbol).Value;
    }

    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 300)]
    public void Explain_AnyStart_EverySubstitutionGivesThePrintedValue(FeedCase c)
    {
        StartResult result = Runs.OfOhms(c.Ohms).At(Forty).Start(c.Load, Starting, ElectricPotential.FromVolts(c.Volts));
        Derivation derivation = result.Explain();
        Steps.AssertRenders(derivation);
        Steps.AssertEvaluate(derivation);
    }

    [Fact]
    public void Explain_Chain_ChecksEveryCamera()
    {
        Load nine = Load.ConstantPower(Power.FromWatts(4));
        CameraChain chain = new CameraChain(new ChainLink(Runs.Eighteen, Length.FromMeters(20), nine + Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.1))))
            .Then(new ChainLink(new CableRun(Runs.Eighteen, Length.FromMeters(10)).Then(new Joint("splice", ElectricResistance.FromOhms(0.02))), nine))
            .Then(new ChainLink(Runs.Eighteen, Length.FromMeters(15), Load.LargerOf(Power.FromWatts(3), ElectricCurrent.FromAmperes(0.2))));
        ChainResult result = chain.Feed(ElectricPotential.FromVolts(12), Forty);
        Derivation derivation = result.Explain();
        Steps.AssertEvaluate(derivation);
        Steps.AssertRenders(derivation);
        Assert.Equal(["r1", "R1", "r2.1", "R2.1", "R2", "r3", "R3", "I3", "J3", "I2", "J2", "I1", "J1", "V1", "V2", "V3"], derivation.Steps.Select(s => s.Symbol));
        Assert.Equal(result.Taps[2].LoadVoltage.Volts, derivation.Steps[^1].Value);
        Cultures.AssertSame(() => result.Explain().ToMarkdown());
    }

    // Nothing is written down before it is asked for.
    [Fact]
    public void Feed_AllocatesNothing()
    {
        PreparedRun run = Runs.OfOhms(1).At(Forty);
        Load load = Load.ConstantPower(Power.FromWatts(9));
        var from = ElectricPotential.FromVolts(12);
        double sum = Feed(run, load, from, 1000);
        long before = GC.GetAllocatedBytesForCurrentThread();
        sum += Feed(run, load, from, 1000);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    private static double Feed(PreparedRun run, Load load, ElectricPotential from, int times)
    {
        double sum = 0;
        for (int i = 0; i < times; i++) sum += run.Feed(load, from).LoadVoltage.Volts + (run.Start(load, Starting, from).Starts ? 1 : 0);
        return sum;
    }
}
