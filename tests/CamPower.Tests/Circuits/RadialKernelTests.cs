using System;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>The tree solver against the closed form, where there is one, and against Kirchhoff's laws where there is none.</summary>
/// <remarks>Balance alone would accept the collapsed branch; the closed form and the shooting rule that out.</remarks>
public class RadialKernelTests
{
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 1000)]
    public void TrySolve_OneLoad_IsTheSingleRun(FeedCase c)
    {
        var volts = new double[1];
        bool solved = RadialKernel.TrySolve([-1], [c.Ohms], [c.Load], c.Volts, volts);
        double closed = RunKernel.LoadVolts(c.Volts, c.Ohms, c.Load);
        Assert.Equal(closed > 0, solved);
        if (solved) Assert.Equal(closed, volts[0], 1e-9 * c.Volts);
    }

    // A run split into links without loads is the run: series resistances add.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 500)]
    public void TrySolve_RunInLinks_IsTheSingleRun(FeedCase c)
    {
        var volts = new double[4];
        bool solved = RadialKernel.TrySolve([-1, 0, 1, 2], [c.Ohms / 8, 0, c.Ohms / 2, c.Ohms * 3 / 8], [Load.None, Load.None, Load.None, c.Load], c.Volts, volts);
        Assert.Equal(c.Feed().HasOperatingPoint, solved);
        if (solved) Assert.Equal(c.Feed().LoadVoltage.Volts, volts[3], 1e-9 * c.Volts);
    }

    // n equal branches r behind a trunk R: each branch sees n·R + r, by symmetry.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 500)]
    public void TrySolve_EqualStarBranches_MatchTheSingleRun(FeedCase c)
    {
        for (int branches = 2; branches <= 5; branches++)
        {
            double trunk = c.Ohms / 2 / branches, branch = c.Ohms / 2;
            int[] parents = [-1, .. Enumerable.Repeat(0, branches)];
            double[] ohms = [trunk, .. Enumerable.Repeat(branch, branches)];
            Load[] loads = [Load.None, .. Enumerable.Repeat(c.Load, branches)];
            var volts = new double[branches + 1];
            bool solved = RadialKernel.TrySolve(parents, ohms, loads, c.Volts, volts);
            double closed = RunKernel.LoadVolts(c.Volts, (branches * trunk) + branch, c.Load);
            Assert.Equal(closed > 0, solved);
            if (solved) Assert.All(volts.Skip(1), v => Assert.Equal(closed, v, 1e-9 * c.Volts));
        }
    }

    // Two unlike loads on one pair: shooting back from the far voltage gives the source voltage that it needs; an operating
    // point exists where the least of those is not above the source.
    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 300)]
    public void TrySolve_ChainOfTwo_ExistsWhereShootingBackFindsASource(FeedCase c)
    {
        foreach (double share in new[] { 0.3, 0.5, 0.8, 1.2 })
        {
            Load near = Load.ConstantPower(Power.FromWatts(share * c.Load.Watts / 2)), far = c.Load;
            double first = c.Ohms / 4, second = c.Ohms / 2;
            double best = LoadLine.Peak(v => -Needed(v), c.Volts * 1e-9, c.Volts);
            double least = Needed(best);
            if (Math.Abs(least - c.Volts) < 1e-6 * c.Volts) continue;

            var volts = new double[2];
            bool solved = RadialKernel.TrySolve([-1, 0], [first, second], [near, far], c.Volts, volts);
            Assert.Equal(least < c.Volts, solved);
            if (!solved) continue;
            Assert.Equal(c.Volts, Needed(volts[1]), 1e-8 * c.Volts);
            Assert.True(volts[1] >= best * (1 - 1e-6), "Not the stable branch.");

            double Needed(double farVolts)
            {
                double farAmperes = c.Amperes(farVolts), nearVolts = farVolts + (second * farAmperes);
                return nearVolts + (first * (farAmperes + (near.Watts / nearVolts)));
            }
        }
    }

    // Random trees of many loads: current balances at every node, and power over the whole. The load is what the tree can
    // bear with room, or far too much; both answers are asserted.
    [Fact]
    public void TrySolve_RandomTrees_BalanceCurrentAtEveryNodeAndPowerOverAll()
    {
        var random = new Random(20260104);
        int solvedTrees = 0;
        for (int trial = 0; trial < 300; trial++)
        {
            int count = random.Next(2, 40);
            int[] parents = [.. Enumerable.Range(0, count).Select(i => random.Next(-1, i))];
            double[] ohms = [.. Enumerable.Range(0, count).Select(_ => random.Next(5) == 0 ? 0 : random.NextDouble())];
            Load[] loads = [.. Enumerable.Range(0, count).Select(_ => RandomLoad(random, 40.0 / count))];
            var volts = new double[count];
            if (!RadialKernel.TrySolve(parents, ohms, loads, 12, volts)) continue;

            solvedTrees++;
            AssertBalanced(parents, ohms, loads, 12, volts);
        }

        Assert.InRange(solvedTrees, 100, 300);
    }

    [Fact]
    public void TrySolve_TooMuchPower_SaysNo() =>
        Assert.False(RadialKernel.TrySolve([-1, 0, 1], [1, 1, 1], [Load.None, Load.None, Load.ConstantPower(Power.FromWatts(12.001))], 12, new double[3]));

    private static void AssertBalanced(int[] parents, double[] ohms, Load[] loads, double sourceVolts, double[] volts)
    {
        int count = parents.Length;
        var through = new double[count];
        double supplied = 0, used = 0;
        for (int i = count - 1; i >= 0; i--)
        {
            through[i] += loads[i].CurrentAt(ElectricPotential.FromVolts(volts[i])).Amperes;
            if (parents[i] >= 0) through[parents[i]] += through[i];
            else supplied += sourceVolts * through[i];
            used += (volts[i] * loads[i].AmperesAt(volts[i])) + (through[i] * through[i] * ohms[i]);
        }

        for (int i = 0; i < count; i++)
        {
            double feeding = parents[i] < 0 ? sourceVolts : volts[parents[i]];
            Assert.Equal(feeding, volts[i] + (ohms[i] * through[i]), 1e-9 * sourceVolts);
        }

        Assert.Equal(supplied, used, 1e-8 * Math.Max(supplied, 1));
    }

    private static Load RandomLoad(Random random, double most) => random.Next(5) switch
    {
        0 => Load.None,
        1 => Load.ConstantCurrent(ElectricCurrent.FromAmperes(most / 12 * random.NextDouble())),
        2 => Load.ConstantResistance(ElectricResistance.FromOhms(144 / (most * (random.NextDouble() + 0.01)))),
        3 => Load.LargerOf(Power.FromWatts(most * random.NextDouble()), ElectricCurrent.FromAmperes(most / 12 * random.NextDouble())),
        _ => Load.ConstantPower(Power.FromWatts(most * random.NextDouble())),
    };
}
