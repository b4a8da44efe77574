using System;
using System.Diagnostics;
using System.Globalization;
using System.Linq;

namespace CamPower.Planning.Tests;

/// <summary>Plans made-up yards of growing size and prints a table: <c>-- ordinary 64</c>, <c>-- hard 32</c>, or nothing for all.</summary>
internal static class Program
{
    private const double WorkLimit = 60;

    private static void Main(string[] args)
    {
        string[] sets = args.Length > 0 ? [args[0]] : ["ordinary", "hard"];
        int[] sizes = args.Length > 1 ? [.. args.Skip(1).Select(a => int.Parse(a, CultureInfo.InvariantCulture))] : [8, 16, 32, 64, 128];
        Console.WriteLine("| set | cameras | places | seed | seconds | work | rounds | cost | gap % |");
        Console.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        _ = PlannedYard.Of(4, 1, 1).Plan(WorkLimit);
        foreach (string set in sets)
        {
            foreach (int size in sizes)
            {
                for (int seed = 1; seed <= 3; seed++) Print(set, size, seed);
            }
        }
    }

    private static void Print(string set, int cameras, int seed)
    {
        PlanningQuestion question = string.Equals(set, "hard", StringComparison.Ordinal)
            ? PlannedYard.HardOf(cameras, seed)
            : PlannedYard.Of(cameras, Math.Max(2, cameras / 8), seed);
        var watch = Stopwatch.StartNew();
        SitePlan plan = question.Plan(WorkLimit);
        string cost = plan.Cost is double value ? value.ToString("0.00", CultureInfo.InvariantCulture) : "none";
        string gap = plan.Cost is null ? (plan.IsProven ? "proven" : "not found") : plan.Gap!.Value.Percent.ToString("0.00", CultureInfo.InvariantCulture);
        Console.WriteLine(FormattableString.Invariant(
            $"| {set} | {cameras} | {question.Places.Count} | {seed} | {watch.Elapsed.TotalSeconds:0.0} | {plan.Work:0.00} | {plan.Rounds} | {cost} | {gap} |"));
    }
}
