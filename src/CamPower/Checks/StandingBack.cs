using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>Leaves out the findings of a rule where another rule of the set replaces it.</summary>
/// <remarks>The rules that replace others are asked first. A finding that is left out does not replace another.</remarks>
internal sealed class StandingBack
{
    private readonly Dictionary<(string Rule, SubjectKind Kind, string Name), List<Finding>> _spoken = [];

    /// <summary>The rules in an order in which each comes after those that replace it; null where some replace each other.</summary>
    internal static IReadOnlyList<Rule>? SpeakersFirst(IReadOnlyList<Rule> rules)
    {
        var ordered = new List<Rule>(rules.Count);
        List<Rule> left = [.. rules];
        while (left.Count > 0)
        {
            var waiting = new HashSet<string>(left.Select(r => r.Id), StringComparer.Ordinal);
            List<Rule> next = [.. left.Where(rule => !Speakers(rule).Any(waiting.Contains))];
            if (next.Count == 0) return null;
            ordered.AddRange(next);
            left.RemoveAll(next.Contains);
        }

        return ordered;
    }

    /// <summary>The finding without the conditions in which rules that were asked before replace it; null where nothing is left.</summary>
    internal Finding? Heard(Rule rule, Finding found)
    {
        if (rule.YieldsTo.Any(id => SpokenBy(id, found.About).Count > 0)) return null;
        Finding? heard = Finding.Worst(InConditions(found)
            .Where(f => !rule.YieldsInConditionsOf.Any(id => IsSpokenIn(f.Condition, SpokenBy(id, f.About)))));
        if (heard is not null) Remember(heard);
        return heard;
    }

    private static IEnumerable<string> Speakers(Rule rule) => rule.YieldsTo.Concat(rule.YieldsInConditionsOf);

    private static IEnumerable<Finding> InConditions(Finding finding) => finding.Elsewhere.Prepend(finding);

    private static bool IsSpokenIn(Condition? condition, List<Finding> spoken) =>
        spoken.SelectMany(InConditions).Any(f => f.Condition is null || condition is null || ReferenceEquals(f.Condition, condition));

    private List<Finding> SpokenBy(string id, Subject about) =>
        _spoken.TryGetValue((id, about.Kind, about.Name), out List<Finding>? spoken) ? spoken : [];

    private void Remember(Finding heard)
    {
        (string, SubjectKind, string) key = (heard.Rule, heard.About.Kind, heard.About.Name);
        if (!_spoken.TryGetValue(key, out List<Finding>? spoken)) _spoken.Add(key, spoken = []);
        spoken.Add(heard);
    }
}
