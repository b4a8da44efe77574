using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.JointOverloaded"/>.</summary>
/// <remarks>A run is one finding, of its worst joint: first one above its rated current, then the one that heats most. A start is over
/// before a joint is warm.</remarks>
internal sealed class JointOverloadedRule() : Rule("joint-overloaded", Severity.Failure,
    "A joint of a run carries more current than it is rated for, or its own resistance heats it. A contact that heats gets worse.",
    "Make the joint again with a crimp or a screw terminal, and measure its resistance. Or let less current through it.",
    Sources.HotSpotPolicy, "joint too hot")
{
    private static readonly double Warm = CheckConstants.WarmJoint.Value, Hot = CheckConstants.HarmlessSpot.Value;

    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        SiteAssessment assessment = Require.NotNull(evidence, nameof(evidence)).Assessment;
        IReadOnlyList<SiteRun> runs = assessment.Site.Runs;
        if (!runs.Any(run => run.Run.Parts.Any(part => part is Joint))) yield break;
        RunCurrents currents = evidence.RunCurrents;
        for (int i = 0; i < runs.Count; i++)
        {
            int index = i;
            List<LoadedJoint> loaded = [.. from joint in runs[i].Run.Parts.OfType<Joint>().Distinct()
                from c in Enumerable.Range(0, assessment.Site.Conditions.Count)
                let condition = assessment.Site.Conditions[c]
                where !condition.On.HasFlag(LoadComponents.StartUp)
                let outgoing = currents.Amperes(index, isReturn: false, c)
                select new LoadedJoint(joint, condition, outgoing, currents.Amperes(index, isReturn: true, c))];
            if ((AboveRating(runs[i], loaded) ?? TooWarm(runs[i], loaded)) is Finding found) yield return found;
        }
    }

    private Finding? AboveRating(SiteRun run, List<LoadedJoint> loaded)
    {
        LoadedJoint? worst = loaded.Where(j => j.Joint.RatedAmperes is double rated && Limits.IsAbove(j.Amperes, rated))
            .OrderByDescending(j => j.Amperes / j.Joint.RatedAmperes).FirstOrDefault();
        if (worst is null) return null;
        double rating = worst.Joint.RatedAmperes!.Value;
        return Find(Subject.Of(run),
            $"Its joint ({worst.Joint.Name}) carries {Digits.Of(worst.Amperes, rating)} A in \"{worst.Condition}\"; " +
            $"it is rated for {Digits.Of(rating, worst.Amperes, "0.##")} A.",
            ElectricCurrent.FromAmperes(worst.Amperes), worst.Joint.RatedCurrent, worst.Condition,
            remedy: "Use a joint that is rated for the current, such as a crimp or a screw terminal.");
    }

    private Finding? TooWarm(SiteRun run, List<LoadedJoint> loaded)
    {
        LoadedJoint? worst = loaded.OrderByDescending(j => j.Watts).FirstOrDefault();
        if (worst is null || !Limits.IsAbove(worst.Watts, Warm)) return null;
        bool isHot = Limits.IsAbove(worst.Watts, Hot);
        double limit = isHot ? Hot : Warm;
        return Find(Subject.Of(run),
            $"Its joint ({worst.Joint}) heats with {Digits.Of(worst.Watts, limit, "0.0")} W in \"{worst.Condition}\": " +
            Invariant($"{worst.Amperes:0.00} A flow through it. ") +
            $"{(isHot ? "That may burn; policy maximum" : "Policy maximum")} {Digits.Of(limit, worst.Watts, "0.#")} W.",
            Power.FromWatts(worst.Watts), Power.FromWatts(limit), worst.Condition, isHot ? Severity.Failure : Severity.Caution);
    }

    // Half of its resistance is in each pole.
    private sealed class LoadedJoint(Joint joint, Condition condition, double outgoing, double returning)
    {
        internal Joint Joint => joint;

        internal Condition Condition => condition;

        internal double Amperes { get; } = System.Math.Max(outgoing, returning);

        internal double Watts { get; } = joint.OhmsAt20C / 2 * ((outgoing * outgoing) + (returning * returning));
    }
}
