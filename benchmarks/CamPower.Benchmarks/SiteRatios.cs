using System;
using System.Linq;

namespace CamPower.Benchmarks;

/// <summary>What a site costs against the bare closed form, in one process and in a minute: the ratios, and what is allocated.</summary>
/// <remarks>Each round times the closed form and the question one right after the other, by the time of the processor: other work on the
/// machine slows both. The least of either over all rounds is nearest to a quiet machine; the median of the rounds' ratios says how far off
/// this one was.</remarks>
internal static class SiteRatios
{
    private const int Rounds = 31, WarmingSeconds = 2, LeastWarming = 100;
    private const double RoundSeconds = 0.01;

    private static readonly SiteSize[] Usual = [new(2, 16), new(1, 4), new(1, 32), new(10, 4), new(100, 4)];

    /// <summary>Prints a line for each size, kind of site and question.</summary>
    /// <param name="sizes">Sizes as <see cref="SiteSize.ToString"/> writes them; none for the usual ones.</param>
    internal static void Print(string[] sizes)
    {
        Console.WriteLine("boxes x outputs | site | question | to the closed form | median of rounds | µs an output | KB");
        foreach (SiteSize size in sizes.Length == 0 ? Usual : Array.ConvertAll(sizes, SiteSize.Parse))
        {
            Print(size, "nothing of faults", MadeUpSite.Sparse(size));
            Print(size, "everything", MadeUpSite.Declared(size));
        }
    }

    private static void Print(SiteSize size, string kind, Site site)
    {
        var raw = new RawRuns(site);
        SiteAssessment assessment = site.Assess();
        Print("Assess", () => site.Assess());
        Print("Check", () => RuleSet.Standard.Check(assessment));
        Print("AssessAndCheck", () => RuleSet.Standard.Check(site.Assess()));

        void Print(string question, Func<object> ask)
        {
            Action bare = () => raw.Sum(), asked = () => ask();
            int times = Warmed(asked), bareTimes = Warmed(bare);
            (double Bare, double Asked)[] rounds =
                [.. Enumerable.Range(0, Rounds).Select(_ => (Seconds(bare, bareTimes), Seconds(asked, times)))];
            double least = rounds.Min(r => r.Asked), median = rounds.Select(r => r.Asked / r.Bare).Order().ElementAt(Rounds / 2);
            long before = GC.GetAllocatedBytesForCurrentThread();
            asked();
            double kilobytes = (GC.GetAllocatedBytesForCurrentThread() - before) / 1024.0;
            Console.WriteLine(FormattableString.Invariant($"{size} | {kind} | {question} | {least / rounds.Min(r => r.Bare):F0} | ") +
                FormattableString.Invariant($"{median:F0} | {least / size.Count * 1e6:F2} | {kilobytes:F0}"));
        }
    }

    // Until the compiler has optimized it; how often a round then asks.
    private static int Warmed(Action question)
    {
        TimeSpan began = Environment.CpuUsage.TotalTime;
        int asked = 0;
        while (asked < LeastWarming || (Environment.CpuUsage.TotalTime - began).TotalSeconds < WarmingSeconds)
        {
            question();
            asked++;
        }

        return Math.Max(1, (int)(RoundSeconds / Seconds(question, 50)));
    }

    private static double Seconds(Action question, int times)
    {
        TimeSpan began = Environment.CpuUsage.TotalTime;
        for (int i = 0; i < times; i++) question();
        return (Environment.CpuUsage.TotalTime - began).TotalSeconds / times;
    }
}
