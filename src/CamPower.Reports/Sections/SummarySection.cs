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

    private static string Verdict(IReadOnlyList<Finding> findings) => findings.Count == 0
        ? "Nothing was found against it."
        : findings.Max(f => f.Severity) switch
        {
            Severity.Danger => "Do not energise it: something in it is dangerous.",
            Severity.Failure => "It will not work as it stands.",
            Severity.Caution => "It works, with less in hand than it should have.",
            _ => "Nothing keeps it from working; there is something to know.",
        };

    private static string Counted(IReadOnlyList<Finding> findings) => findings.Count == 0
        ? "nothing"
        : string.Join(", ", findings.GroupBy(f => f.Severity).OrderByDescending(g => g.Key).Select(g => Said.Severity(g.Key, g.Count())));

    private static string Devices(SiteAssessment assessment)
    {
        int well = assessment.Devices.Count(DeviceRow.IsWell);
        return FormattableString.Invariant($"{well} of {assessment.Devices.Count} up and inside the voltage that they accept in every condition");
    }
}
