using System;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>Networks of no sense: whatever can be described is solved or said to have no operating point; it always ends, and no NaN comes out.</summary>
public class AnyNetworkTests
{
    private const int MostIterations = 20_000;

    [Fact]
    public void Solve_AnyDescription_EndsWithAnAnswerThatBalances()
    {
        int solved = 0, refused = 0, none = 0, blocked = 0;
        for (int seed = 0; seed < 4000; seed++)
        {
            DcNetwork network;
            try
            {
                network = Describe(new Random(seed));
            }
            catch (ArgumentException)
            {
                refused++;
                continue;
            }

            NetworkSolution solution = network.Solve();
            double? margin = network.MarginToCollapse()?.DecimalFractions;
            Assert.True(margin is null or >= 0, $"seed {seed}: margin {margin}");
            AssertSoonFound(network, seed);
            if (!solution.HasOperatingPoint)
            {
                none++;
                continue;
            }

            solved++;
            blocked += solution.BlockedSources.Count;
            AssertSound(network, solution, seed);
        }

        // The generator visits every kind of answer.
        Assert.True(solved > 500 && refused > 100 && none > 100 && blocked > 50, $"{solved} solved, {refused} refused, {none} none, {blocked} blocked");
    }

    private static void AssertSound(DcNetwork network, NetworkSolution solution, int seed)
    {
        double largest = network.Sources.Max(s => s.Voltage.Volts);
        Assert.All(network.NodeNames, node => Assert.True(Math.Abs(solution.VoltageAt(node).Volts) < 1e3 * largest, $"seed {seed}"));
        Assert.All(network.Loads, load => Assert.True(solution.AtLoad(load.Name).Voltage.Volts > 0, $"seed {seed}"));
        Assert.All(network.Sources, source => Assert.True(solution.CurrentFrom(source.Name).Amperes > -1e-8, $"seed {seed}: {source} sinks {solution.CurrentFrom(source.Name)}"));
        Assert.All(network.Branches, branch => Assert.True(double.IsFinite(solution.CurrentIn(branch.Name).Amperes), $"seed {seed}"));
        PowerBalance balance = solution.Balance;
        double residual = Math.Abs(balance.Residual), throughput = balance.Delivered + balance.Lost;
        Assert.True(residual <= (1e-8 * throughput) + 1e-9, $"seed {seed}: {balance}, residual {residual}");
    }

    // At the worst of these the end of the branch was once looked for in steps of a billionth, a million times over.
    private static void AssertSoonFound(DcNetwork network, int seed)
    {
        var search = new OperatingPointSearch(network.Circuit, network.Plan);
        CollapseMargin.Of(search);
        Assert.True(search.Iterations < MostIterations, $"seed {seed}: {search.Iterations} iterations");
    }

    // A tree, a few more branches, sources and loads anywhere: mostly networks, now and then none.
    private static DcNetwork Describe(Random random)
    {
        int nodes = random.Next(2, 9), ties = random.Next(0, 6), sources = random.Next(1, 4), loads = random.Next(0, 6);
        var builder = new DcNetworkBuilder();
        for (int i = 1; i < nodes; i++) AddBranch(i, random.Next(i));
        for (int k = 0; k < ties; k++) AddBranch(random.Next(nodes), random.Next(nodes));
        for (int s = 0; s < sources; s++)
        {
            ElectricResistance inside = ElectricResistance.FromOhms(random.Next(2) == 0 ? 0 : Magnitude(random, 0.01, 10));
            int plus = random.Next(1, nodes), minus = random.Next(3) > 0 ? 0 : random.Next(nodes);
            if (plus != minus) builder.AddSource($"source {s}", $"{plus}", $"{minus}", ElectricPotential.FromVolts(Magnitude(random, 5, 50)), inside);
        }

        for (int k = 0; k < loads; k++)
        {
            int plus = random.Next(1, nodes), minus = random.Next(4) > 0 ? 0 : random.Next(nodes);
            if (plus != minus) builder.AddLoad($"load {k}", $"{plus}", $"{minus}", Draw(random));
        }

        return builder.Build("0");

        void AddBranch(int from, int to)
        {
            double ohms = random.Next(12) == 0 ? 0 : Magnitude(random, 1e-3, 100);
            if (from != to) builder.AddBranch($"branch {from} {to} {random.Next()}", $"{from}", $"{to}", ElectricResistance.FromOhms(ohms));
        }
    }

    private static Load Draw(Random random) => random.Next(5) switch
    {
        0 => Load.ConstantResistance(ElectricResistance.FromOhms(Magnitude(random, 0.1, 1e4))),
        1 => Load.ConstantCurrent(ElectricCurrent.FromAmperes(Magnitude(random, 1e-3, 2))),
        2 => Load.LargerOf(Power.FromWatts(Magnitude(random, 0.01, 20)), ElectricCurrent.FromAmperes(Magnitude(random, 1e-3, 1))),
        _ => Load.ConstantPower(Power.FromWatts(Magnitude(random, 0.01, 20))),
    };

    private static double Magnitude(Random random, double low, double high) => low * Math.Pow(high / low, random.NextDouble());
}
