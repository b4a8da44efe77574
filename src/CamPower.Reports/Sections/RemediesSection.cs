using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Section of the changes that remove each finding, and of the cheapest changes for the whole site.</summary>
internal static class RemediesSection
{
    internal static Section Of(IReadOnlyList<FindingRemedies> remedies, SiteRepair? repair)
    {
        List<Block> blocks =
        [
            new Paragraph("Each change was tried: the changed site was solved in every condition and checked against every rule. "
                + "A remedy removes its finding, adds none and makes none more severe. Mains wiring is for a licensed electrician."),
        ];
        if (remedies.Count > 0)
        {
            blocks.Add(new DataTable("What removes each finding, the cheapest first",
                [new("About"), new("Finding"), new("What to do"), new("Cost", IsNumber: true)], [.. remedies.SelectMany(Rows)]));
        }

        if (repair is not null) blocks.AddRange(Of(repair));
        return new Section("Remedies", blocks);
    }

    private static IEnumerable<string[]> Rows(FindingRemedies found)
    {
        string about = found.Finding.About.Name, finding = found.Finding.Title;
        return found.Remedies.Count == 0
            ? [[about, finding, found.Summary, Said.Nothing]]
            : found.Remedies.Select(remedy => (string[])[about, finding, string.Join(" ", remedy.Changes), Cost(remedy.Cost, remedy.Unit)]);
    }

    private static IEnumerable<Block> Of(SiteRepair repair)
    {
        string kind = repair.IsComplete ? "The cheapest changes" : "The cheapest changes that were found";
        yield return new Paragraph(repair.Changes.Count == 0
            ? repair.Left.Count == 0
                ? "There is no danger and no failure: no change is needed."
                : "No change in the price list removes a danger or a failure that is left."
            : $"{kind} against every danger and failure cost {Cost(repair.Cost, repair.Unit)} together:", IsStrong: true);
        if (repair.Changes.Count > 0) yield return new ItemList([.. repair.Changes.Select(change => change.Text)]);
        if (repair.Left.Count == 0) yield break;
        yield return new Paragraph("Still to do by hand, as each finding says:");
        yield return new ItemList([.. repair.Left.Select(f => $"{f.About.Name}: {f.Title}. {f.Remedy}")]);
    }

    private static string Cost(double cost, string unit) => Invariant($"{cost:0.##} {unit}");
}
