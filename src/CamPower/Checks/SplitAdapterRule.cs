using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>One adapter split between several devices that together ask for more than it may give.</summary>
public sealed class SplitAdapterRule() : Rule("split-adapter-beyond-rating", Severity.Failure,
    "One adapter is split between devices that together take more than it may deliver.",
    "Give each camera an adapter of its own, or use a distribution box.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackInConditionsOf => ["receptacle-voltage-outside-supply-range", "box-too-hot", "box-too-cold"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes.Where(IsSplit)
        .SelectMany(box => Worst(SupplyAboveDeratedRatingRule.Overloads(box).Select(c => Found(box, c))));

    private static bool IsSplit(BoxAssessment box) => box.Box.IsAdapter && box.Outputs.Count == 1 && box.Outputs[0].Devices.Count > 1;

    private Finding Found(BoxAssessment box, BoxInCondition worst) => Find(Subject.Of(box.Box),
        Invariant($"Its {box.Outputs[0].Devices.Count} devices {(worst.IsDemandOnly ? "ask for" : "take")} {worst.Amperes:0.00} A in \"{worst.Condition}\"; it may deliver {worst.DeratedAmperes:0.00} A.{SupplyAboveDeratedRatingRule.Then(worst.Rail)}"),
        worst.TotalCurrent, worst.DeratedRating, worst.Condition);
}
