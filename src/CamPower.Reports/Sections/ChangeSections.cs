using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Sections of the differences between two versions of a site: parts, findings, margins, material.</summary>
internal static class ChangeSections
{
    internal static IEnumerable<Section> Of(SiteComparison comparison)
    {
        yield return new Section("At a glance",
        [
            new Paragraph(comparison.IsEmpty ? "The two versions do not differ." : Capitalized($"{comparison}."), IsStrong: true),
            new Paragraph("Calculated, not measured: measure at commissioning."),
        ]);
        if (comparison.Gained.Count > 0) yield return new Section("New findings", [new FoundList(FindingGroup.Of(comparison.Gained))]);
        if (comparison.Lost.Count > 0)
        {
            yield return new Section("Findings that are gone",
                [new ItemList([.. comparison.Lost.Select(f => $"{f.Severity}: {f.About.Name}: {f.Title}")])]);
        }

        if (comparison.Added.Count > 0) yield return new Section("Added", [new ItemList(comparison.Added)]);
        if (comparison.Removed.Count > 0) yield return new Section("Removed", [new ItemList(comparison.Removed)]);
        if (comparison.Changed.Count > 0) yield return new Section("Changed", [new ItemList(comparison.Changed)]);
        if (comparison.Margins.Count > 0) yield return new Section("Margins", [Margins(comparison.Margins)]);
        if (comparison.Material.Count > 0) yield return new Section("Material", [Material(comparison.Material)]);
    }

    private static DataTable Margins(IReadOnlyList<MovedMargin> margins) => new("Margins that changed, largest loss first",
        [new("About"), new("Room"), new("Before", true), new("After", true), new("Change, %", true)],
        [.. margins.Select(margin => (string[])
        [
            margin.About.Name, margin.What, Said.Quantity(margin.Before), Said.Quantity(margin.After),
            Invariant($"{margin.Change.Percent:+0.0;−0.0;0.0}"),
        ])]);

    private static DataTable Material(IReadOnlyList<MaterialLine> lines) => new("Material that is needed more, or less",
        [new("Item"), new("Kind"), new("Quantity", true), new("Cost", true)],
        [.. lines.Select(line => (string[])
        [
            line.Item, line.Kind, Invariant($"{line.Quantity:+0.##;−0.##;0} {line.Unit}"), Invariant($"{line.Cost:+0.##;−0.##;0}"),
        ])]);

    private static string Capitalized(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
