using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Reports.Contents;

namespace CamPower.Reports.Sections;

/// <summary>Section of what an installer wants to know first.</summary>
internal static class SummarySection
{
    internal static Section Of(SiteReport report)
    {
        Site site = report.Assessment.Site;
        var facts = new List<Fact>();
        if (report.Date is DateOnly date) facts.Add(new Fact("Date", date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
        if (report.Author is string author) facts.Add(new Fact("Author", author));
        if (report.Revision is string revision) facts.Add(new Fact("Revision", revision));
        facts.AddRange(
        [
            new("Findings", report.FindingSummary),
            new("Devices", report.DeviceSummary),
            new("Boxes and adapters", string.Join(", ", site.Boxes.Select(b => b.Name))),
        ]);
        if (site.Altitude is UnitsNet.Length altitude) facts.Add(new Fact("Altitude", Said.Quantity(altitude)));
        return new Section("At a glance", [new Paragraph(report.Headline, IsStrong: true), new Facts(facts)]);
    }
}
