using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.FaultsUnknown"/>.</summary>
internal sealed class FaultsUnknownRule() : Rule("faults-unknown", Severity.Note,
    "Data is not stated that a verdict on shorts, on heat in conductors or on starting needs. No rule can judge without it.",
    "Take the data from the data sheets. Where a data sheet does not state it, ask the maker.", Sources.OvercurrentProtection)
{
    public override bool IsAboutWhatIsNotStated => true;

    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        List<string> unknown = [.. Require.NotNull(evidence, nameof(evidence)).Unstated.Where(item => !item.HasRuleOfItsOwn)
            .GroupBy(item => (item.What, item.Decides))
            .Select(alike => $"Not stated: {alike.Key.What} ({string.Join(", ", alike.Select(item => item.Where))}), to judge {alike.Key.Decides}.")];
        if (unknown.Count > 0) yield return Find(new Subject(SubjectKind.Site, evidence.Assessment.Site.Name), string.Join(" ", unknown));
    }
}
