using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace CamPower.Planning;

/// <summary>A plan as text.</summary>
internal static class PlanText
{
    internal static string Headline(SitePlan plan)
    {
        if (plan.Cost is not double cost)
        {
            return plan.IsProven ? "There is no plan that keeps every rule: proven." : "No plan was found within the work limit.";
        }

        string unit = plan.Question.Prices.Unit;
        return plan.IsProven
            ? FormattableString.Invariant($"{cost:0.##} {unit}, proven least.")
            : FormattableString.Invariant($"{cost:0.##} {unit}; no plan costs less than {plan.LowerBound:0.##} {unit} ")
                + FormattableString.Invariant($"(gap {plan.Gap!.Value.Percent:0.##} %).");
    }

    internal static string Of(SitePlan plan) => string.Join('\n', Lines(plan)) + "\n";

    private static IEnumerable<string> Lines(SitePlan plan)
    {
        yield return $"{plan.Question}: {Headline(plan)}";
        foreach (DistributionBox box in plan.Site?.Boxes ?? [])
        {
            SiteRun[] runs = [.. plan.Site!.Runs.Where(run => PlanningQuestion.Same(run.From.BoxName, box.Name))
                .OrderBy(run => run.From.OutputNumber)];
            BoxInCondition worst = plan.Assessment!.Boxes.Single(b => ReferenceEquals(b.Box, box)).Worst;
            yield return FormattableString.Invariant($"{box}: {box.Supply}, {runs.Length} of {box.Outputs.Count} outputs used, {worst}");
            foreach (SiteRun run in runs)
            {
                yield return FormattableString.Invariant($"  output {run.From.OutputNumber}: {run.Run} to {run.To}");
            }
        }

        if (plan.Bindings.Count > 0) yield return "What keeps it from costing less:";
        foreach (PlanBinding binding in plan.Bindings) yield return $"  {binding}";
        foreach (Finding finding in plan.Findings) yield return $"{finding}";
    }
}
