using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Sections;
using UnitsNet;

namespace CamPower.Reports.Contents;

/// <summary>The findings of one rule; its remedy and the source of its limit are stated once.</summary>
internal sealed record FindingGroup(Severity Severity, string Rule, string Remedy, string Source, IReadOnlyList<Finding> Findings)
{
    /// <summary>The rule in words: "supply voltage too high".</summary>
    internal string Heading => Findings[0].Title;

    /// <summary>In order of severity, then as they were found first.</summary>
    internal static IReadOnlyList<FindingGroup> Of(IEnumerable<Finding> findings) =>
    [
        .. findings.GroupBy(f => (f.Severity, f.Rule, f.Remedy, Source: f.Source.ToString()))
            .OrderByDescending(g => g.Key.Severity)
            .Select(g => new FindingGroup(g.Key.Severity, g.Key.Rule, g.Key.Remedy, g.Key.Source, [.. g])),
    ];

    /// <summary>The two values in one unit and the condition, as far as there are any; else nothing.</summary>
    internal static string Evidence(Finding finding)
    {
        var parts = new List<string>();
        if (finding.Measured is IQuantity measured)
        {
            parts.Add("value " + Said.Quantity(finding.Limit is null ? measured : measured.ToUnit(finding.Limit.Unit)));
        }

        if (finding.Limit is IQuantity limit) parts.Add("limit " + Said.Quantity(limit));
        if (finding.Condition is Condition condition) parts.Add("in " + condition);
        return parts.Count == 0 ? string.Empty : $"({string.Join(", ", parts)})";
    }
}
