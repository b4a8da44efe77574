using System.Collections.Generic;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>Networks far larger than a site: the number of iterations does not grow with them, nor does the work of one without need.</summary>
public class LargeNetworkTests
{
    [Fact]
    public void Solve_RadialOfTenThousandPairs_TakesAFewIterations()
    {
        DcNetwork network = new RandomNetworks(1).Create("radial", 10_000, 0.5, mixedShares: false);
        Assert.True(network.IsRadial);
        AssertSolved(network.Solve(), 6);
    }

    // A chain is the deepest tree: nothing here may recurse.
    [Fact]
    public void Solve_ChainOfFiftyThousand_TakesAFewIterations()
    {
        var builder = new DcNetworkBuilder().AddSource("supply", "p0", "n0", ElectricPotential.FromVolts(48));
        for (int i = 1; i <= 50_000; i++)
        {
            builder.AddBranch($"out {i}", $"p{i - 1}", $"p{i}", ElectricResistance.FromMilliohms(1))
                .AddBranch($"back {i}", $"n{i}", $"n{i - 1}", ElectricResistance.FromMilliohms(1))
                .AddLoad($"load {i}", $"p{i}", $"n{i}", Load.ConstantPower(Power.FromMilliwatts(0.1)));
        }

        AssertSolved(builder.Build("n0").Solve(), 6);
    }

    [Fact]
    public void Solve_MeshOfTenThousandNodes_TakesAFewIterations()
    {
        DcNetwork network = new RandomNetworks(1).Create("tied returns", 5_000, 0.5, mixedShares: false);
        Assert.False(network.IsRadial);
        Assert.True(network.NodeNames.Count > 10_000);
        AssertSolved(network.Solve(), 6);
    }

    // Fifty by fifty: the factor fills in, but far less than the three million entries of a dense one.
    [Fact]
    public void Pattern_OfAGrid_StaysSparse()
    {
        const int Side = 50;
        var first = new List<int>();
        var second = new List<int>();
        for (int i = 0; i < Side * Side; i++)
        {
            if (i % Side > 0) { first.Add(i - 1); second.Add(i); }
            if (i >= Side) { first.Add(i - Side); second.Add(i); }
        }

        var pattern = new SparsePattern(Side * Side, [.. first], [.. second]);
        Assert.InRange(pattern.FactorRows.Length, Side * Side, 20 * Side * Side);
    }

    // A hub with ten thousand neighbors: eliminated last, or the work would be its square and the factor dense.
    [Fact]
    public void Pattern_OfAStar_FillsNothing()
    {
        const int Leaves = 10_000;
        int[] hub = new int[Leaves], leaf = new int[Leaves];
        for (int i = 0; i < Leaves; i++) leaf[i] = i + 1;
        Assert.Equal(Leaves, new SparsePattern(Leaves + 1, hub, leaf).FactorRows.Length);
    }

    private static void AssertSolved(NetworkSolution solution, int mostIterations)
    {
        Assert.True(solution.HasOperatingPoint);
        Assert.InRange(solution.Iterations, 1, mostIterations);
        double delivered = solution.Balance.Delivered;
        Assert.InRange(solution.Balance.Residual / delivered, -1e-9, 1e-9);
        Assert.True(delivered > 0);
    }
}
