using System;
using System.Globalization;
using System.Linq;
using System.Text;
using UnitsNet;

namespace CamPower.Tests.Repository;

/// <summary>The page of rules and inspections, made from the standard sets.</summary>
internal static class RulesPage
{
    public static string Text()
    {
        var page = new StringBuilder("""
            # Rules and inspections

            ## Rules

            Every rule of `RuleSet.Standard`, worst first, in the order in which they are asked. Drop one with `Without`, change
            or add one with `With`. This page is made from the code by the tests; do not edit it (see DEVELOPERS.md).

            *Danger*: do not energize, something may burn or someone may be hurt. *Failure*: correct it before use. *Caution*: it works
            with less margin than it should have, or goes dark for seconds. *Note*: not stated, assumed, or known to be harmless. This is
            a scale of this library for a design on paper, not that of the injury levels on the label of a product. A finding may have
            another severity than its rule, depending on the numbers.

            """.ReplaceLineEndings("\n"));
        foreach (Rule rule in RuleSet.Standard.Rules.OrderByDescending(r => r.Severity))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n### {rule.Id}\n\n**{rule.Severity}: {rule.Title}.** {rule.Purpose}\n\n- To do: {rule.Remedy}\n");
            if (rule.Limit is IQuantity limit) page.Append(CultureInfo.InvariantCulture, $"- Limit: {limit.ToString("s4", CultureInfo.InvariantCulture)}\n");
            if (rule.YieldsTo.Count > 0) page.Append(CultureInfo.InvariantCulture, $"- Not shown for the same part when one of these rules already found it: {string.Join(", ", rule.YieldsTo)}\n");
            if (rule.YieldsInConditionsOf.Count > 0)
            {
                page.Append(CultureInfo.InvariantCulture, $"- Not shown for the same part and condition when one of these rules already found it: {string.Join(", ", rule.YieldsInConditionsOf)}\n");
            }

            page.Append(CultureInfo.InvariantCulture, $"- Source: {rule.Source}\n");
            page.Append(CultureInfo.InvariantCulture, $"- In code: `{RuleMembers.Of(rule)}`\n");
        }

        page.Append("""

            ## Inspections

            Every item of `InspectionList.Standard`. The package cannot check these. Do all of them on every site, even on one without
            findings. Leave work on mains to a licensed electrician, and follow the local code.

            """.ReplaceLineEndings("\n"));
        foreach (Inspection item in InspectionList.Standard.Items)
        {
            page.Append(CultureInfo.InvariantCulture, $"\n### {item.Id}\n\n{item.Look}\n\n- Why: {item.Why}\n- Caution: {item.Caution}\n- Source: {item.Source}\n");
        }

        return page.ToString();
    }
}
