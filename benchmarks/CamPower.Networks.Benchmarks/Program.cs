using System;
using System.Diagnostics;
using System.Linq;
using System.Threading;
using CamPower.Circuits;

namespace CamPower.Networks.Benchmarks;

/// <summary>Radial networks against the same kernel in C and against ngspice; meshes against ngspice: the fastest of interleaved rounds, in one run.</summary>
internal static class Program
{
    private static void Main(string[] args)
    {
        if (!args.Contains("--build-only")) Radial();
        BuildAgainstSolve("boxes of 15", Tree.Site(10_000));
        BuildAgainstSolve("chain", Tree.Chain(10_000));
        if (args.Contains("--build-only")) return;
        RadialAgainstNgspice();
        MeshAgainstNgspice("returns tied at ends", Meshes.TiedAtEnds(340));
        MeshAgainstNgspice("returns tied at ends", Meshes.TiedAtEnds(3400));
        MeshAgainstNgspice("grid", Meshes.Grid(22));
        MeshAgainstNgspice("grid", Meshes.Grid(71));
    }

    private static void Radial()
    {
        Console.WriteLine("| tree | nodes | iterations | C ns/node | kernel ns/node | ratio | whole Solve ns/node |");
        Console.WriteLine("|---|---|---|---|---|---|---|");
        foreach (int count in new[] { 1_000, 10_000, 1_000_000 })
        {
            Radial("random", Tree.Random(count));
            Radial("site", Tree.Site(count));
            Radial("chain", Tree.Chain(count));
        }
    }

    private static unsafe void Radial(string name, Tree tree)
    {
        int count = tree.Parents.Length;
        int[] rows = [.. Enumerable.Range(0, count)];
        Rung[] rungs = [.. rows.Select(i => new Rung(tree.Parents[i], tree.Ohms[i]))];
        var loads = new LoadShares(tree.Loads, rows, count);
        var kernel = new RadialKernel(rungs, Tree.SourceVolts);
        double[] volts = new double[count], inC = new double[count], behind = new double[2 * count];
        DcNetwork network = tree.ToNetwork();
        int iterations = 0, iterationsInC = 0;
        double[] times = Fastest(count, () =>
        {
            iterations = 0;
            kernel.OpenCircuit(volts);
            if (!Newton.TryDescend(kernel, loads, volts, ref iterations)) throw new InvalidOperationException("collapsed");
        }, () =>
        {
            fixed (Rung* r = rungs)
            fixed (LoadRow* l = loads.Rows)
            fixed (double* v = inC, pb = behind)
            {
                iterationsInC = Ladder.Solve(count, r, l, Tree.SourceVolts, v, pb);
            }
        }, () => network.Solve());
        if (iterations != iterationsInC || Enumerable.Range(0, count).Any(i => Math.Abs(volts[i] - inC[i]) > 1e-10)) throw new InvalidOperationException("C differs");
        double perNode = 1e9 / count;
        Console.WriteLine(FormattableString.Invariant(
            $"| {name} | {count} | {iterations} | {times[1] * perNode:F1} | {times[0] * perNode:F1} | {times[0] / times[1]:F2} | {times[2] * perNode:F0} |"));
    }

    private static void BuildAgainstSolve(string name, Tree tree)
    {
        DcNetworkBuilder builder = tree.Describe();
        DcNetwork network = builder.Build("0");
        double[] times = Fastest(network.NodeNames.Count, () => network.Solve(), () => builder.Build("0"), () => tree.Describe());
        Console.WriteLine(FormattableString.Invariant(
            $"{name}, {network.NodeNames.Count} nodes: Solve {times[0] * 1e3:F3} ms, Build {times[1] * 1e3:F3} ms: {times[1] / times[0]:F1} times; describing {times[2] * 1e3:F3} ms"));
    }

    private static void RadialAgainstNgspice()
    {
        Console.WriteLine("\n| radial, ngspice in the same run | nodes | iterations | ngspice analysis ms | Solve ms | ratio | with Build ms | margin ms |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|");
        Tree tree = Tree.Site(10_000);
        Report("site", 10_000, tree.ToNetwork(), () => tree.ToNetwork());
    }

    private static void Report(string name, int nodes, DcNetwork network, Func<DcNetwork> build)
    {
        double[] times = Fastest(nodes, () => network.Solve(), () => network.MarginToCollapse());
        double building = Time(() => build());
        double simulator = Enumerable.Range(0, 5).Min(_ => Ngspice.AnalysisMilliseconds(network));
        Console.WriteLine(FormattableString.Invariant(
            $"| {name} | {nodes} | {network.Solve().Iterations} | {simulator:F0} | {times[0] * 1e3:F3} | {simulator / (times[0] * 1e3):F0} | {building * 1e3:F1} | {times[1] * 1e3:F2} |"));
    }

    private static void MeshAgainstNgspice(string name, DcNetwork network)
    {
        double[] solve = Fastest(network.NodeNames.Count, () => network.Solve());
        Circuit circuit = network.Circuit;
        double[] plan = Fastest(network.NodeNames.Count, () => Mesh.TryCreate(circuit, new bool[circuit.SourceCount]));
        double simulator = Enumerable.Range(0, network.NodeNames.Count > 10_000 ? 2 : 5).Min(_ => Ngspice.AnalysisMilliseconds(network));
        Console.WriteLine(FormattableString.Invariant(
            $"{name}, {network.NodeNames.Count} nodes: {network.Solve().Iterations} iterations, set-up {plan[0] * 1e3:F2} ms, Solve {solve[0] * 1e3:F2} ms, ngspice {simulator:F0} ms: {simulator / ((solve[0] + plan[0]) * 1e3):F1} times, set-up included"));
    }

    // Interleaved rounds, so that a change of the machine's speed meets all alike; the fastest of each, for on a shared
    // machine the others measure the neighbors.
    private static double[] Fastest(int nodes, params Action[] actions)
    {
        int repeat = Math.Max(1, 200_000 / nodes), rounds = nodes >= 1_000_000 ? 9 : 21;
        var times = actions.Select(_ => new double[rounds]).ToArray();
        WarmUp(actions);
        for (int round = 0; round < rounds; round++)
        {
            for (int k = 0; k < actions.Length; k++)
            {
                double seconds = Time(() => { for (int r = 0; r < repeat; r++) actions[k](); }) / repeat;
                times[k][round] = seconds;
            }
        }

        return [.. times.Select(t => t.Min())];
    }

    // Twice for a third of a second, with a pause: the runtime compiles its best code in the background of a busy thread.
    private static void WarmUp(Action[] actions)
    {
        for (int pass = 0; pass < 2; pass++)
        {
            foreach (Action action in actions)
            {
                long start = Stopwatch.GetTimestamp();
                do action(); while (Stopwatch.GetElapsedTime(start).TotalSeconds < 0.35);
            }

            Thread.Sleep(250);
        }
    }

    private static double Time(Action action)
    {
        long start = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }
}
