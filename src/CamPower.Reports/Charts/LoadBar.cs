using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Reports.Charts;

/// <summary>One row of a chart of loads: a share of the limit in each condition, null where the limit is nothing.</summary>
internal sealed record LoadBar(string Label, string Name, IReadOnlyList<double?> Percents)
{
    internal static LoadBar Of(OutputAssessment output)
    {
        string name = output.Devices.Count == 1 ? output.Devices[0].Name : Invariant($"{output.Devices.Count} devices");
        return new LoadBar(
            ChartFrame.RowLabel(Invariant($"{output.Output.Number} {name}")),
            Invariant($"Output {output.Output.Number}, {name}"),
            [.. output.InConditions.Select(c => (double?)(c.Current.Amperes / output.Output.Limit.Amperes * 100))]);
    }

    internal static LoadBar Of(BoxAssessment box) => new(
        "supply", "The supply", [.. box.InConditions.Select(c => Share(c.TotalCurrent.Amperes, c.DeratedRating.Amperes))]);

    /// <summary>The most of its shares, in a sentence.</summary>
    internal string InWords() => Percents.Any(p => p is null)
        ? $"{Name}: in some condition it may deliver nothing."
        : Invariant($"{Name}: at most {Percents.Max():0} % of the limit.");

    private static double? Share(double amperes, double limit) => limit > 0 ? amperes / limit * 100 : null;
}
