using System.Linq;
using CamPower;
using CamPower.Reports;

namespace SiteCheck;

/// <summary>What removes each finding, the cheapest first, and the cheapest changes for the whole site.</summary>
internal static class RemedyList
{
    private const int Indent = 9, Most = 3;

    public static void Write(Page page, SiteReport report)
    {
        if (report.Repair is not SiteRepair repair) return;
        page.Blank();
        page.Text($"Remedies, each tried by a full check, the cheapest first; prices in {repair.Unit}:");
        foreach (FindingRemedies found in report.Remedies)
        {
            page.Labeled(found.Finding.Severity.ToString().ToUpperInvariant(), color: null, $"{found.Finding.About.Name}: {found.Finding.Rule.Replace('-', ' ')}", Indent);
            if (found.Remedies.Count == 0) page.Text(found.Summary, Indent);
            foreach (Remedy remedy in found.Remedies.Take(Most)) page.Text($"- {remedy}", Indent);
        }

        page.Blank();
        page.Text($"The cheapest way to no danger and no failure{(repair.IsComplete ? "" : " that was found")}:");
        page.Text(repair.ToString(), indent: 2);
    }
}
