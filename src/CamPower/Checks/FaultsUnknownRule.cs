using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.FaultsUnknown"/>.</summary>
internal sealed class FaultsUnknownRule() : Rule("faults-unknown", Severity.Note,
    "Some data is missing. Without it, shorts, heat in conductors or starting cannot be checked.",
    "Take the data from the data sheets. You may leave it out: what is named here is then not checked.", Sources.OvercurrentProtection,
    "data missing")
{
    public override bool IsAboutWhatIsNotStated => true;

    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        List<Unstated> unknown = [.. Require.NotNull(evidence, nameof(evidence)).Unstated.Where(item => !item.HasRuleOfItsOwn)];
        if (unknown.Count == 0) yield break;
        IEnumerable<string> sentences = unknown.GroupBy(item => item.Decides, StringComparer.Ordinal)
            .Select(alike => $"Not checked: {alike.Key}. Not stated: {string.Join("; ", WithPlaces(alike))}.");
        yield return Find(new Subject(SubjectKind.Site, evidence.Assessment.Site.Name), string.Join(" ", sentences));
    }

    // What is missing at the same places is named together.
    private static IEnumerable<string> WithPlaces(IEnumerable<Unstated> unknown) =>
        unknown.GroupBy(item => item.What, item => item.Where, StringComparer.Ordinal)
            .GroupBy(what => string.Join(", ", what), what => what.Key, StringComparer.Ordinal)
            .Select(alike => $"{string.Join(", ", alike)} ({alike.Key})");
}
