using System;
using System.Globalization;
using System.Linq;
using System.Text;
using UnitsNet;

namespace CamPower.Tests.Repository;

/// <summary>The page of rules, made from the standard rule set.</summary>
internal static class RulesPage
{
    public static string Text()
    {
        var page = new StringBuilder("""
            # Rules

            Every rule of `RuleSet.Standard`, worst first, in the order in which they are asked. Drop one with `Without`, change
            or add one with `With`. This page is made from the code by the tests; do not edit it (see DEVELOPERS.md).

            *Danger*: do not energise. *Failure*: it will not work. *Caution*: it works, with less in hand than it should have.
            *Note*: know it.

            """.ReplaceLineEndings("\n"));
        foreach (Rule rule in RuleSet.Standard.Rules.OrderByDescending(r => r.Severity))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {rule.Id}\n\n**{rule.Severity}.** {rule.Purpose}\n\n- To do: {rule.Remedy}\n");
            if (rule.Limit is IQuantity limit) page.Append(CultureInfo.InvariantCulture, $"- Limit: {limit.ToString("s4", CultureInfo.InvariantCulture)}\n");
            page.Append(CultureInfo.InvariantCulture, $"- Source: {rule.Source}\n- Class: `{rule.GetType().Name}`\n");
        }

        return page.ToString();
    }
}
