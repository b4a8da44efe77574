using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>One adapter split between several devices that together ask for more than it may give.</summary>
/// <remarks>It speaks for <see cref="SupplyAboveDeratedRatingRule"/>, which is silent about split adapters.</remarks>
public sealed class SplitAdapterRule() : Rule("split-adapter-beyond-rating", Severity.Failure,
    "One adapter is split between devices that together take more than it may deliver.",
    "Give each camera an adapter of its own, or use a distribution box.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes.Where(IsSplit))
        {
            BoxInCondition? worst = BoxTooHotRule.WorstOfTheRest(box);
            if (worst is null || !Limits.IsAbove(worst.Amperes, worst.DeratedAmperes)) continue;
            yield return Find(Subject.Of(box.Box),
                Invariant($"In \"{worst.Condition}\" its {box.Outputs[0].Devices.Count} devices {(worst.IsDemandOnly ? "ask for" : "take")} {worst.Amperes:0.00} A and it may deliver {worst.DeratedAmperes:0.00} A."),
                worst.TotalCurrent, worst.DeratedRating, worst.Condition);
        }
    }

    internal static bool IsSplit(BoxAssessment box) => box.Box.IsAdapter && box.Outputs.Count == 1 && box.Outputs[0].Devices.Count > 1;
}
