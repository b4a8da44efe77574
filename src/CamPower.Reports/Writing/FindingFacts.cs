using System.Collections.Generic;
using CamPower.Reports.Contents;
using CamPower.Reports.Sections;
using UnitsNet;

namespace CamPower.Reports.Writing;

/// <summary>What stands behind a finding: the two values in one unit, the condition, the rule and its source.</summary>
internal static class FindingFacts
{
    internal static IEnumerable<Fact> Of(Finding finding)
    {
        if (finding.Measured is IQuantity measured) yield return new("Found", Said.Quantity(finding.Limit is null ? measured : measured.ToUnit(finding.Limit.Unit)));
        if (finding.Limit is IQuantity limit) yield return new("Allowed", Said.Quantity(limit));
        if (finding.Condition is Condition condition) yield return new("In", condition.Name);
        yield return new("Rule", finding.Rule);
        yield return new("Source", finding.Source.ToString());
    }
}
