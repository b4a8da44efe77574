using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;

namespace CamPower.Reports.Sections;

/// <summary>What an installer wants to know first.</summary>
internal static class SummarySection
{
    internal static Section Of(SiteReport report)
    {
        Site site = report.Assessment.Site;
        var facts = new List<Fact>
        {
            new("Found", report.FindingSummary),
            new("Devices", report.DeviceSummary),
            new("Boxes and adapters", string.Join(", ", site.Boxes.Select(b => b.Name))),
        };
        if (site.Altitude is UnitsNet.Length altitude) facts.Add(new Fact("Height above the sea", Said.Quantity(altitude)));
        return new Section("At a glance", [new Paragraph(report.Headline, IsStrong: true), new Facts(facts)]);
    }
}
