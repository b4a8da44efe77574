using System;
using System.IO;
using System.Linq;
using System.Text.Json.Nodes;
using System.Xml.Linq;

namespace CamPower.Reports.Tests;

/// <summary>Remedies, material and changes in the reports: everything that was found stands there, in every form.</summary>
public class ChangeReportTests
{
    private static readonly Site Yard = Samples.Read("boatyard");

    // The same yard set a volt lower: far cameras get too little.
    private static readonly Site Low = Yard.With(Yard.Boxes[0].WithSetPoint(Samples.Volts(12)));

    private static readonly SiteComparison Comparison = Low.ComparedWith(Yard, RuleSet.Standard, PriceList.Neutral);

    [Fact]
    public void ChangeReport_NamesEachFindingChangeAndMargin()
    {
        var report = new ChangeReport(Comparison);
        Assert.NotEmpty(Comparison.Gained);
        foreach (string text in new[] { string.Concat(XDocument.Parse(report.ToHtml()).DescendantNodes().OfType<XText>().Select(t => t.Value)), report.ToMarkdown() })
        {
            Assert.All(Comparison.Gained, finding => Assert.Contains(finding.About.Name, text, StringComparison.Ordinal));
            Assert.Contains("set point 13 V DC", text, StringComparison.Ordinal);
            Assert.Contains("Margins that changed", text, StringComparison.Ordinal);
        }

        Assert.Contains("The two versions do not differ.", new ChangeReport(Yard.ComparedWith(Yard, RuleSet.Standard, PriceList.Neutral)).ToMarkdown(), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_HoldsWhatDiffers()
    {
        using var stream = new MemoryStream();
        new ChangeReport(Comparison).WriteJson(stream);
        JsonNode json = JsonNode.Parse(System.Text.Encoding.UTF8.GetString(stream.ToArray()))!;
        Assert.Equal(Comparison.Changed, json["changed"]!.AsArray().Select(text => (string)text!));
        Assert.Equal(Comparison.Gained.Select(f => (f.Rule, f.About.Name)), json["gained"]!.AsArray().Select(f => ((string)f!["rule"]!, (string)f["subject"]!["name"]!)));
        Assert.Equal(Comparison.Margins.Count, json["margins"]!.AsArray().Count);
        Assert.Equal(Comparison.Margins[0].Change.Percent, (double)json["margins"]![0]!["change"]!["number"]!);
        Assert.Empty(json["added"]!.AsArray());
    }

    [Fact]
    public void SiteReport_HasRemediesRepairAndMaterial()
    {
        SiteAssessment assessment = Low.Assess();
        var report = new SiteReport(assessment, RuleSet.Standard.Check(assessment))
        {
            Remedies = Low.FindRemedies(RuleSet.Standard, PriceList.Neutral),
            Repair = Low.CheapestRepair(RuleSet.Standard, PriceList.Neutral),
            Material = Low.ListMaterial(),
        };
        string markdown = report.ToMarkdown();
        Assert.All(report.Remedies.SelectMany(found => found.Remedies), remedy => Assert.Contains(remedy.Changes[0].Text, markdown, StringComparison.Ordinal));
        Assert.Contains("Bill of materials", markdown, StringComparison.Ordinal);
        Assert.Contains("winter storage west: from yard box output 11", markdown, StringComparison.Ordinal);
        using var stream = new MemoryStream();
        report.WriteJson(stream);
        JsonNode json = JsonNode.Parse(System.Text.Encoding.UTF8.GetString(stream.ToArray()))!;
        Assert.Equal(report.Repair.Changes.Select(change => change.Text), json["repair"]!["changes"]!.AsArray().Select(text => (string)text!));
        foreach (FindingRemedies found in report.Remedies)
        {
            JsonNode finding = Assert.Single(json["findings"]!.AsArray(), f => (string)f!["message"]! == found.Finding.Message && (string)f["subject"]!["name"]! == found.Finding.About.Name)!;
            Assert.Equal(found.Remedies.Select(r => r.Cost), finding["remedies"]!.AsArray().Select(r => (double)r!["cost"]!));
        }
    }
}
