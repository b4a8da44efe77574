using System;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Networks.Benchmarks;

/// <summary>Meshes with a positive, a negative and, in one, a shield node at each camera.</summary>
internal static class Meshes
{
    /// <summary>Rows of cameras along a pair; every row's return and shield meet at the recorder.</summary>
    internal static DcNetwork TiedAtEnds(int cameras, int perRow = 20)
    {
        var random = new Random(1);
        var builder = new DcNetworkBuilder().AddSource("supply", "p", "n", ElectricPotential.FromVolts(24));
        builder.AddBranch("earth", "recorder", "n", Ohms(random));
        for (int i = 0; i < cameras; i++)
        {
            bool first = i % perRow == 0;
            builder.AddBranch($"out{i}", first ? "p" : $"p{i - 1}", $"p{i}", Ohms(random));
            builder.AddBranch($"back{i}", $"n{i}", first ? "n" : $"n{i - 1}", Ohms(random));
            builder.AddBranch($"shield{i}", $"s{i}", first ? "recorder" : $"s{i - 1}", Ohms(random));
            if (i % perRow == perRow - 1) builder.AddBranch($"tie{i}", $"n{i}", $"s{i}", Ohms(random));
            builder.AddLoad($"camera{i}", $"p{i}", $"n{i}", Load.ConstantPower(Power.FromWatts(0.2)));
        }

        return builder.Build("n");
    }

    /// <summary>Two planar grids, out and back, tied at every box.</summary>
    internal static DcNetwork Grid(int side)
    {
        var random = new Random(1);
        var builder = new DcNetworkBuilder().AddSource("supply", "p0", "n0", ElectricPotential.FromVolts(24), ElectricResistance.FromOhms(0.05));
        for (int i = 0; i < side * side; i++)
        {
            if (i % side > 0) Tie(builder, random, i - 1, i);
            if (i >= side) Tie(builder, random, i - side, i);
            if (i > 0) builder.AddLoad($"camera{i}", $"p{i}", $"n{i}", Load.ConstantPower(Power.FromWatts(40.0 / (side * side))));
        }

        return builder.Build("n0");
    }

    private static void Tie(DcNetworkBuilder builder, Random random, int from, int to)
    {
        builder.AddBranch($"out{from}-{to}", $"p{from}", $"p{to}", Ohms(random));
        builder.AddBranch($"back{from}-{to}", $"n{to}", $"n{from}", Ohms(random));
    }

    private static ElectricResistance Ohms(Random random) => ElectricResistance.FromOhms(0.05 + (0.2 * random.NextDouble()));
}
