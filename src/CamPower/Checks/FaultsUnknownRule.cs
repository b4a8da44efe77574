using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>All that is not known of the faults and the starts of a site, in one finding: what to state, for what, and which verdict it would allow.</summary>
/// <remarks>A Note: something is not known. The insulation and the installation method are asked for only where a verdict hangs on them.</remarks>
public sealed class FaultsUnknownRule() : Rule("faults-unknown", Severity.Note,
    "Something is not stated that a verdict on shorts, on heat in conductors or on starting needs: no rule can speak of it.",
    "Take what is not stated from the data sheets; where a sheet says nothing, ask its maker.", Sources.OvercurrentProtection)
{
    /// <inheritdoc/>
    public override bool IsAboutWhatIsNotStated => true;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        List<string> unknown = [.. Require.NotNull(evidence, nameof(evidence)).Unstated.Where(item => !item.HasRuleOfItsOwn)
            .GroupBy(item => (item.What, item.Allows)).Select(alike => $"{alike.Key.What} ({string.Join(", ", alike.Select(item => item.Where))}), for {alike.Key.Allows}")];
        if (unknown.Count > 0) yield return Find(new Subject(SubjectKind.Site, evidence.Assessment.Site.Name), "Not stated: " + string.Join("; ", unknown) + ".");
    }
}
