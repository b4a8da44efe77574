using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;

namespace CamPower.Reports.Sections;

/// <summary>What an installer wants to know first.</summary>
internal static class SummarySection
{
    internal static Section Of(SiteAssessment assessment, IReadOnlyList<Finding> findings)
    {
        Site site = assessment.Site;
        var facts = new List<Fact>
        {
            new("Found", Counted(findings)),
            new("Devices", Devices(assessment)),
            new("Boxes and adapters", string.Join(", ", site.Boxes.Select(b => b.Name))),
        };
        if (site.Altitude is UnitsNet.Length altitude) facts.Add(new Fact("Height above the sea", Said.Quantity(altitude)));
        return new Section("At a glance", [new Paragraph(Verdict(findings), IsStrong: true), new Facts(facts)]);
    }

    // It never says that the installation may be energized: nobody has looked at it.
    private static string Verdict(IReadOnlyList<Finding> findings)
    {
        if (findings.Any(f => f.Severity == Severity.Danger)) return "Do not energize.";
        int notStated = findings.Count(f => f.IsNotStated);
        string shown = notStated == 0 ? "No danger found in what was checked." : $"Not shown to be safe: {Said.Count(notStated, "item", "items")} not stated.";
        return findings.Any(f => f.Severity == Severity.Failure) ? $"Correct it before use. {shown}" : shown;
    }

    private static string Counted(IReadOnlyList<Finding> findings) => findings.Count == 0
        ? "nothing"
        : string.Join(", ", findings.GroupBy(f => f.Severity).OrderByDescending(g => g.Key).Select(g => Said.Severity(g.Key, g.Count())));

    private static string Devices(SiteAssessment assessment)
    {
        int well = assessment.Devices.Count(DeviceRow.IsWell);
        return FormattableString.Invariant($"{well} of {assessment.Devices.Count} up and inside the voltage that they accept in every condition");
    }
}
