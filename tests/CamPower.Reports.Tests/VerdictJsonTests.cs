using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text.Json.Nodes;
using System.Threading;
using CamPower.Tests.Repository;
using UnitsNet;

namespace CamPower.Reports.Tests;

/// <summary>The JSON of findings and verdicts: what the library says, in units that never change, described in docs/json.md.</summary>
public class VerdictJsonTests
{
    private static readonly string[] Names = ["boat-shed", "boatyard", "boatyard-as-found"];

    public static TheoryData<string> Sites => [.. Names];

    [Theory]
    [MemberData(nameof(Sites))]
    public void Findings_AreThoseOfTheReport(string site)
    {
        SiteReport report = Samples.Report(Samples.Read(site));
        JsonNode json = Json(report);
        Assert.Equal(report.Assessment.Site.Name, (string)json["site"]!);
        Assert.Equal(report.Headline, (string)json["headline"]!);
        Assert.Equal(
            report.Findings.Select(f => (f.Rule, f.Severity.ToString(), f.About.Kind.ToString(), f.About.Name, f.Condition?.Name, f.Message, f.Remedy, f.Measured is null, f.Limit is null)),
            json["findings"]!.AsArray().Select(f => ((string)f!["rule"]!, Word(f["severity"]), Word(f["subject"]!["kind"]), (string)f["subject"]!["name"]!, (string?)f["condition"],
                (string)f["message"]!, (string)f["remedy"]!, f["measured"] is null, f["limit"] is null)));
        Assert.All(Enum.GetValues<Severity>(), s => Assert.Equal(report.Findings.Count(f => f.Severity == s), (int)json["counts"]![s.ToString().ToLowerInvariant()]!));
        Assert.Equal(report.NotStated.Count, (int)json["counts"]!["notStated"]!);
        Assert.Equal(report.NotStated.SelectMany(what => what.Select(where => (what.Key, where))), json["notStated"]!.AsArray().Select(n => ((string)n!["what"]!, (string)n["where"]!)));
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public void Verdicts_AreTheJudgmentsOfTheAssessment(string site)
    {
        SiteReport report = Samples.Report(Samples.Read(site));
        JsonNode[] lines = [.. Json(report)["verdicts"]!.AsArray()!];
        foreach (DeviceAssessment device in report.Assessment.Devices)
        {
            JsonNode[] own = Of(lines, device.Device.Name);
            Assert.Equal(device.Verdict.ToString(), Word(Assert.Single(own, l => (string)l["what"]! == "device")["verdict"]));
            AssertLine(device.AtLightLoad, own, "highest-voltage-at-light-load", condition: null);
            foreach (DeviceInCondition at in device.InConditions) AssertLine(at.LowestVoltage(Ratio.FromPercent(2)), own, "lowest-voltage", at.Condition.Name);
        }

        foreach (BoxAssessment box in report.Assessment.Boxes.Where(b => b.Outputs.Count > 0))
        {
            foreach (BoxInCondition at in box.InConditions) AssertLine(at.Load(Ratio.FromPercent(80)), Of(lines, box.Box.Name), "current-of-supply", at.Condition.Name);
        }

        foreach (OutputFaults output in report.Assessment.StudyFaults())
        {
            JsonNode[] own = Of(lines, Subject.Of(output.Box, output.Output).Name);
            foreach (OutputInCondition at in output.Assessment.InConditions) AssertLine(at.OfLimit, own, "current-of-output", at.Condition.Name);
            foreach (ProtectionInCondition at in output.InConditions) AssertLine(at.Load, own, "current-of-protective-device", at.Condition.Name);
            foreach (ProtectionInCondition at in output.InConditions) AssertLine(at.Start ?? default, own, "start-through-protective-device", at.Condition.Name);
        }
    }

    // Crest, valley and true RMS of every device on a transformer, in every condition; of nothing else.
    [Fact]
    public void Alternating_IsWhatEachDeviceGetsAndTakes()
    {
        SiteReport report = Samples.Report(Samples.Read("glasshouse"));
        JsonNode[] lines = [.. Json(report)["alternating"]!.AsArray()!];
        DeviceInCondition[] expected = [.. report.Assessment.Devices.SelectMany(d => d.InConditions).Where(at => at.Ac is { HasSteadyState: true })];
        Assert.NotEmpty(expected);
        Assert.Equal(expected.Select(at => (at.Device.Name, at.Condition.Name)), lines.Select(l => ((string)l["where"]!["name"]!, (string)l["condition"]!)));
        foreach ((DeviceInCondition at, JsonNode line) in expected.Zip(lines))
        {
            Assert.Equal(at.Ac!.Crest.Volts, (double)line["crest"]!["number"]!);
            Assert.Equal(at.Ac.Valley?.Volts, (double?)line["valley"]?["number"]);
            Assert.Equal(at.Ac.Current.Amperes, (double)line["rmsCurrent"]!["number"]!);
            Assert.Equal(at.Ac.ApparentPower.Voltamperes, (double)line["apparentPower"]!["number"]!);
            Assert.Equal(at.Ac.PowerFactor.Percent, (double)line["powerFactor"]!["number"]!);
        }

        Assert.Null(Json(Samples.Report(Samples.Read("boat-shed")))["alternating"]);
    }

    // Each quantity has one unit, whatever the site file is written in.
    [Fact]
    public void Quantities_HaveTheUnitsOfThePage()
    {
        string page = File.ReadAllText(RepositoryFiles.PathOf("docs/json.md"));
        foreach (string site in Names)
        {
            JsonNode json = Json(Samples.Report(Samples.Read(site)));
            IEnumerable<JsonNode?> quantities = json["findings"]!.AsArray().Concat(json["verdicts"]!.AsArray())
                .SelectMany(line => new[] { line!["measured"], line["value"], line["limit"], line["policyLimit"] });
            Assert.All(quantities.OfType<JsonNode>(), q => Assert.Contains($"`{(string)q["unit"]!}`", page, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void WhatIsJudged_IsDescribedOnThePage()
    {
        string page = File.ReadAllText(RepositoryFiles.PathOf("docs/json.md"));
        IEnumerable<string> judged = Names.Concat(["glasshouse", "glasshouse-as-found", "lock", "ferry-as-found"]).SelectMany(site => Json(Samples.Report(Samples.Read(site)))["verdicts"]!.AsArray()).Select(l => (string)l!["what"]!).Distinct();
        Assert.All(judged, what => Assert.Contains($"`{what}`", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Json_IsTheSameInEveryCulture()
    {
        SiteReport report = Samples.Report(Samples.Read("boatyard-as-found"));
        string expected = Text(report);
        CultureInfo before = Thread.CurrentThread.CurrentCulture;
        try
        {
            Thread.CurrentThread.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(expected, Text(report));
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    [Fact]
    public void Stream_StaysOpen()
    {
        using var stream = new MemoryStream();
        Samples.Report(Samples.Read("boat-shed")).WriteJson(stream);
        Assert.True(stream.CanWrite);
        Assert.Equal((byte)'{', stream.ToArray()[0]);
        Assert.Throws<ArgumentNullException>(() => Samples.Report(Samples.Read("boat-shed")).WriteJson(null!));
    }

    private static void AssertLine(Judgment expected, JsonNode[] lines, string what, string? condition)
    {
        JsonNode? line = lines.SingleOrDefault(l => (string)l["what"]! == what && (string?)l["condition"] == condition);
        Assert.Equal(expected.Value is null && expected.NotStated is null, line is null);
        if (line is null) return;
        Assert.Equal(expected.Verdict.ToString(), Word(line["verdict"]));
        Assert.Equal(expected.NotStated, (string?)line["notStated"]);
        Assert.Equal(Number(expected.Value), (double?)line["value"]?["number"]);
        Assert.Equal(Number(expected.Limit), (double?)line["limit"]?["number"]);
        Assert.Equal(Number(expected.PolicyLimit), (double?)line["policyLimit"]?["number"]);
    }

    private static double? Number(IQuantity? quantity) => quantity switch
    {
        null => null,
        ElectricPotential volts => volts.Volts,
        Ratio share => share.Percent,
        _ => ((ElectricCurrent)quantity).Amperes,
    };

    private static JsonNode[] Of(JsonNode[] lines, string name) => [.. lines.Where(l => (string)l["where"]!["name"]! == name)];

    private static string Word(JsonNode? word) => string.Concat(((string)word!).Split('-').Select(part => char.ToUpperInvariant(part[0]) + part[1..]));

    private static JsonNode Json(SiteReport report) => JsonNode.Parse(Text(report))!;

    private static string Text(SiteReport report)
    {
        using var stream = new MemoryStream();
        report.WriteJson(stream);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }
}
