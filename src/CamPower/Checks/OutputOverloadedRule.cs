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
    public override IReadOnlyList<string> StandsBackFor => ["supply-above-derated-rating", "split-adapter-beyond-rating"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes.SelectMany(b => b.Outputs)
        .SelectMany(output => Worst(output.InConditions.Where(c => c.OfLimit.IsViolated).OrderByDescending(c => c.Amperes).Select(c => Found(output, c))));

    // The one output of an adapter is the adapter.
    private Finding Found(OutputAssessment output, OutputInCondition worst) => Find(output.Box.IsAdapter ? Subject.Of(output.Box) : Subject.Of(output.Box, output.Output),
        Invariant($"It {(worst.IsDemandOnly ? "is asked for" : "carries")} {worst.Amperes:0.00} A in \"{worst.Condition}\"; it may carry {output.Output.LimitAmperes:0.##} A."),
        worst.OfLimit.Value, worst.OfLimit.Limit, worst.Condition);
}
