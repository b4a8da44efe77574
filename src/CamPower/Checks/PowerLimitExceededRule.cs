using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>An output that cannot be of the power-limit class that it claims: see <see cref="PowerLimitAssessment"/>.</summary>
public sealed class PowerLimitExceededRule() : Rule("power-limit-exceeded", Severity.Danger,
    "An output claims to be a limited power source or Class 2, and its numbers are above the limits.",
    "Check the listing on the product; until then wire the output as one that is not limited, by the local code.", Sources.PowerLimitClasses)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
        .SelectMany(box => box.Outputs.Select(o => o.Output).Where(o => o.ClaimedClass is not null)
            .GroupBy(o => (o.ClaimedClass, o.LimitAmperes, o.Protection)).Select(alike => (box.Box, Alike: alike.ToList())))
        .Select(x => (x.Alike, Assessed: x.Box.AssessPowerLimit(x.Alike[0].Number, x.Alike[0].ClaimedClass!.Value)))
        .Where(x => x.Assessed.Verdict == PowerLimitVerdict.Exceeds)
        .Select(x => Finding(x.Assessed, x.Alike));

    // Outputs that are alike in all of it are one finding, of their box.
    private Finding Finding(PowerLimitAssessment assessed, List<BoxOutput> alike)
    {
        bool isOne = alike.Count == 1;
        string who = isOne ? "It claims" : Invariant($"{alike.Count} of its outputs claim");
        PowerLimitFigure figure = assessed.Routes[assessed.Routes.Count - 1].Deciding.First();
        return Find(isOne ? Subject.Of(assessed.Box, assessed.Output) : Subject.Of(assessed.Box),
            $"{who} to be {assessed.ClassName}: {string.Join("; ", assessed.Routes)}.", figure.Least, figure.Limit);
    }
}
