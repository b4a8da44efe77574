using System;
using System.Collections.Generic;
using System.Globalization;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Networks.Benchmarks;

/// <summary>A tree of loops, level by level, whose constant power is half of what would collapse it.</summary>
internal sealed class Tree
{
    private Tree(int[] parents, double[] ohms, double[] watts)
    {
        Parents = parents;
        Ohms = ohms;
        Loads = Array.ConvertAll(watts, w => Load.ConstantPower(Power.FromWatts(w)));
    }

    internal const double SourceVolts = 24;

    internal int[] Parents { get; }

    internal double[] Ohms { get; }

    internal Load[] Loads { get; private set; }

    /// <summary>Each node fed from any earlier one.</summary>
    internal static Tree Random(int count) => Create(count, (random, i) => i == 0 ? -1 : random.Next(i));

    /// <summary>Boxes of 15 cameras, each box fed from any earlier one.</summary>
    internal static Tree Site(int count) => Create(count, (random, i) =>
        i == 0 ? -1 : i % 16 == 0 ? random.Next(i / 16) * 16 : i - (i % 16));

    /// <summary>Each node fed from the one before.</summary>
    internal static Tree Chain(int count) => Create(count, (_, i) => i - 1);

    /// <summary>The same as a network, with one pole without resistance.</summary>
    internal DcNetwork ToNetwork() => Describe().Build("0");

    /// <summary>The description of that network.</summary>
    internal DcNetworkBuilder Describe()
    {
        DcNetworkBuilder builder = new DcNetworkBuilder().AddSource("supply", "s", "0", ElectricPotential.FromVolts(SourceVolts));
        for (int i = 0; i < Parents.Length; i++)
        {
            builder.AddBranch(Name("b", i), Parents[i] < 0 ? "s" : Name("n", Parents[i]), Name("n", i), ElectricResistance.FromOhms(Ohms[i]));
            builder.AddLoad(Name("l", i), Name("n", i), "0", Loads[i]);
        }

        return builder;
    }

    private static string Name(string kind, int i) => kind + i.ToString(CultureInfo.InvariantCulture);

    private static Tree Create(int count, Func<Random, int, int> parentOf)
    {
        var random = new Random(1);
        var parents = new int[count];
        for (int i = 0; i < count; i++) parents[i] = parentOf(random, i);
        parents = ByLevel(parents);
        var ohms = new double[count];
        var watts = new double[count];
        for (int i = 0; i < count; i++)
        {
            ohms[i] = 0.1 + (0.4 * random.NextDouble());
            watts[i] = 1 + random.NextDouble();
        }

        // Half the collapse load: by bisection with the kernel.
        var tree = new Tree(parents, ohms, watts);
        double low = 0, high = 1e3;
        for (int k = 0; k < 60 && (low == 0 || high / low > 1.01); k++)
        {
            double middle = low == 0 ? high / 10 : Math.Sqrt(low * high);
            tree.Scale(watts, middle);
            if (RadialKernel.TrySolve(parents, ohms, tree.Loads, SourceVolts, new double[count])) low = middle;
            else high = middle;
        }

        tree.Scale(watts, low / 2);
        return tree;
    }

    private void Scale(double[] watts, double factor) => Loads = Array.ConvertAll(watts, w => Load.ConstantPower(Power.FromWatts(w * factor)));

    // Level by level, siblings together: the order in which a plan of the library stands.
    private static int[] ByLevel(int[] parents)
    {
        var children = new List<int>[parents.Length];
        for (int i = 0; i < parents.Length; i++) children[i] = [];
        for (int i = 1; i < parents.Length; i++) children[parents[i]].Add(i);
        var ordered = new int[parents.Length];
        var queue = new Queue<(int Node, int Parent)>([(0, -1)]);
        for (int place = 0; queue.TryDequeue(out var next); place++)
        {
            ordered[place] = next.Parent;
            foreach (int child in children[next.Node]) queue.Enqueue((child, place));
        }

        return ordered;
    }
}
