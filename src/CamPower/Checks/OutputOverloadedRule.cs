using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>An output that carries more than it may all the time.</summary>
public sealed class OutputOverloadedRule() : Rule("output-overloaded", Severity.Failure,
    "An output of a box carries more than its limit.",
    "Move a device to another output, or use a box with stronger outputs.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        // An adapter's one output is as strong as its supply: the supply's rules speak of it.
        foreach (OutputAssessment output in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes.Where(b => !b.Box.IsAdapter).SelectMany(b => b.Outputs))
        {
            OutputInCondition worst = output.Worst;
            if (!Limits.IsAbove(worst.Amperes, output.Output.LimitAmperes)) continue;
            yield return Find(Subject.Of(output.Box, output.Output),
                Invariant($"In \"{worst.Condition}\" it {(worst.IsDemandOnly ? "is asked for" : "carries")} {worst.Amperes:0.00} A and may carry {output.Output.LimitAmperes:0.##} A."),
                worst.Current, output.Output.Limit, worst.Condition);
        }
    }
}
