using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>Video shields of which nobody can say how much hum is on them, because the ripple of a supply is not stated.</summary>
internal sealed class ShieldHumUnknownRule() : Rule("ground-loop-hum-unknown", Severity.Note,
    "Video shields are declared, and the ripple of a supply that drives current through them is not stated: the hum on them is not known.",
    "Take the ripple from the data sheet of the supply, or look at the picture at commissioning.", CheckConstants.ShieldHum.Source)
{
    /// <inheritdoc/>
    public override bool IsAboutWhatIsNotStated => true;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        Site site = Require.NotNull(evidence, nameof(evidence)).Assessment.Site;
        List<FeedGroup> unknown = [.. site.Feeds.Where(group => group.Links.Count > 0 && Silent(group).Any())];
        if (unknown.Count == 0) yield break;
        int shields = unknown.Sum(group => group.Links.Count);
        yield return Find(new Subject(SubjectKind.Site, site.Name),
            Invariant($"The hum on {shields} video {(shields == 1 ? "shield" : "shields")} is not known. Not stated: ripple of {string.Join(", ", unknown.SelectMany(Silent).Distinct())}."));
    }

    // Boxes of direct current whose ripple is not stated, in the order of their outputs.
    private static IEnumerable<DistributionBox> Silent(FeedGroup group) =>
        group.Feeds.Select(feed => feed.Box).Where(box => box.Supply.Output is DcOutput { Ripple: null });
}
