using System;
using System.IO;
using CamPower;
using CamPower.Files;

namespace FleetCheck;

/// <summary>The summary as text.</summary>
internal static class SummaryPage
{
    internal static void Write(FleetSummary summary, TextWriter to)
    {
        to.WriteLine(summary);
        to.WriteLine();
        to.WriteLine("   sites  findings  rule");
        foreach (FleetRule rule in summary.Rules)
        {
            to.WriteLine(FormattableString.Invariant($"{rule.Sites,8} {rule.Findings,9}  {rule.Severity,-7}  {rule.Rule}"));
        }

        to.WriteLine();
        to.WriteLine("dangers  failures  cautions  worst sites");
        foreach (CheckedSite site in summary.Worst)
        {
            to.WriteLine(FormattableString.Invariant($"{site.CountOf(Severity.Danger),7} {site.CountOf(Severity.Failure),9} ")
                + FormattableString.Invariant($"{site.CountOf(Severity.Caution),9}  {site.SiteName} ({site.Name})"));
        }
    }

    internal static int ExitStatus(FleetSummary summary)
    {
        if (summary.NotChecked > 0) return 3;
        if (summary.WorstAt(Severity.Danger) + summary.WorstAt(Severity.Failure) > 0) return 2;
        return summary.WorstAt(Severity.Caution) > 0 ? 1 : 0;
    }
}
