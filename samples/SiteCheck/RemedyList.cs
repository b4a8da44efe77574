using System.Linq;
using CamPower;
using CamPower.Reports;
using static System.FormattableString;

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
            page.Labeled(found.Finding.Severity.ToString().ToUpperInvariant(), color: null, $"{found.Finding.About.Name}: {found.Finding.Title}", Indent);
            if (found.Remedies.Count == 0) page.Text(found.Summary, Indent);
            foreach (Remedy remedy in found.Remedies.Take(Most)) page.Text($"- {remedy}", Indent);
        }

        page.Blank();
        if (repair.Changes.Count > 0)
        {
            page.Text($"The cheapest way to {(repair.Left.Count == 0 ? "no danger and no failure" : "fewer dangers and failures")}{(repair.IsComplete ? "" : " that was found")}, "
                + Invariant($"{repair.Cost:0.##} {repair.Unit}:"));
            foreach (SiteChange change in repair.Changes) page.Text($"- {change}", indent: 2);
        }

        if (repair.Left.Count == 0 && repair.Changes.Count == 0) page.Text("There is no danger and no failure: no change is needed.");
        if (repair.Left.Count == 0) return;
        page.Text(repair.Changes.Count > 0
            ? "Still to do by hand:"
            : "No change in the price list removes these dangers and failures. Do by hand what \"Fix\" says (--details shows every fix):");
        foreach (Finding left in repair.Left) page.Text($"- {left.About.Name}: {left.Title}", indent: 2);
    }
}
