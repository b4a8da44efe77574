using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Runtime.InteropServices;
using CamPower.Circuits;

namespace CamPower.Benchmarks;

/// <summary>RunBatch beside the same formula in C (batch.c), in turn in one process: the ratio is what to hold.</summary>
internal static class BatchComparison
{
    private const int Rounds = 31;

    private const long RunsARound = 20_000_000;

    internal static void Print()
    {
        Compile();
        Console.WriteLine("runs       C, million runs/s   RunBatch   one by one   RunBatch to C");
        foreach (int count in new[] { 1000, 4000, 1_000_000, 10_000_000 }) Compare(count);
    }

    private static void Compare(int count)
    {
        var random = new Random(1);
        double[] source = Make(() => 11 + (2 * random.NextDouble())), ohms = Make(() => 0.2 + (4 * random.NextDouble()));
        double[] watts = Make(() => 2 + (10 * random.NextDouble())), volts = new double[count], amperes = new double[count];
        double[] voltsInC = new double[count], amperesInC = new double[count];
        double[] inC = new double[Rounds], batch = new double[Rounds], single = new double[Rounds];
        int repeats = (int)Math.Max(1, RunsARound / count);
        for (int round = -4; round < Rounds; round++)
        {
            double c = Rate(() => Feed(source, ohms, watts, voltsInC, amperesInC, count));
            double b = Rate(() => RunBatch.Feed(source, ohms, watts, volts, amperes));
            double s = Rate(() => OneByOne(source, ohms, watts, volts, amperes));
            if (round >= 0) (inC[round], batch[round], single[round]) = (c, b, s);
        }

        if (!volts.SequenceEqual(voltsInC) || !amperes.SequenceEqual(amperesInC)) throw new InvalidOperationException("C gives other answers.");
        double ratio = Median(batch.Zip(inC, (b, c) => b / c));
        Console.WriteLine(FormattableString.Invariant($"{count,-10} {Median(inC),17:0} {Median(batch),10:0} {Median(single),12:0} {ratio,15:0.00}"));

        double[] Make(Func<double> next) => [.. Enumerable.Range(0, count).Select(_ => next())];

        double Rate(Action action)
        {
            long start = Stopwatch.GetTimestamp();
            for (int i = 0; i < repeats; i++) action();
            return (double)count * repeats / 1e6 / Stopwatch.GetElapsedTime(start).TotalSeconds;
        }
    }

    private static void OneByOne(double[] source, double[] ohms, double[] watts, double[] volts, double[] amperes)
    {
        for (int i = 0; i < source.Length; i++)
        {
            volts[i] = RunKernel.LoadVolts(source[i], ohms[i], watts[i], 0, 0);
            amperes[i] = volts[i] > 0 ? watts[i] / volts[i] : 0;
        }
    }

    private static double Median(IEnumerable<double> values) => values.Order().ElementAt(Rounds / 2);

    private static void Compile()
    {
        string library = Path.Combine(AppContext.BaseDirectory, "libbatch.so");
        using Process cc = Process.Start("cc",
        [
            "-O3", "-march=native", "-fno-math-errno", "-ffp-contract=off", "-shared", "-fPIC",
            Path.Combine(AppContext.BaseDirectory, "batch.c"), "-o", library, "-lm",
        ]);
        cc.WaitForExit();
        if (cc.ExitCode != 0) throw new InvalidOperationException("batch.c does not compile.");
    }

    [DllImport("batch", EntryPoint = "feed")]
    private static extern void Feed(double[] source, double[] ohms, double[] watts, double[] volts, double[] amperes, nint count);
}
