using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using System.Text.RegularExpressions;
using System.Threading;
using System.Xml.Linq;
using CamPower.Files;
using CamPower.Files.Tests;
using CamPower.Tests;
using CamPower.Tests.Repository;

namespace CamPower.Reports.Tests;

/// <summary>The page and the Markdown: whole, well-formed, and the same for everybody.</summary>
public partial class SiteReportTests
{
    private static readonly XNamespace Html = "http://www.w3.org/1999/xhtml";

    private static readonly string[] Sites = ["boat-shed", "boatyard", "boatyard-as-found"];

    public static TheoryData<string> Names => [.. Sites];

    [Fact]
    public void BoatShed_IsTheCommittedReport()
    {
        GeneratedPage.AssertCurrent("tests/CamPower.Reports.Tests/boat-shed.md", Samples.Report(Samples.Read("boat-shed")).ToMarkdown());
        GeneratedPage.AssertCurrent("tests/CamPower.Reports.Tests/boat-shed.html", Samples.Report(Samples.Read("boat-shed")).ToHtml());
    }

    [Fact]
    public void Report_IsTheSameInEveryCulture()
    {
        (string, string) expected = Both();
        CultureInfo before = Thread.CurrentThread.CurrentCulture;
        try
        {
            foreach (string culture in new[] { "de-DE", "tr-TR", "ar-SA", "sv-SE" })
            {
                Thread.CurrentThread.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Assert.Equal(expected, Both());
            }
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }

        static (string, string) Both()
        {
            SiteReport report = Samples.Report(Samples.Read("boatyard-as-found"));
            return (report.ToMarkdown(), report.ToHtml());
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Page_HasEveryFindingWithItsRemedyAndSource_WorstFirst(string name)
    {
        SiteReport report = Samples.Report(Samples.Read(name));
        List<XElement> found = [.. Page(report).Descendants(Html + "ol").Where(l => l.Attribute("class")?.Value == "findings").SelectMany(l => l.Elements(Html + "li"))];
        string markdown = Unescaped(report.ToMarkdown());
        Finding[] toCorrect = [.. report.Findings.Where(f => !f.IsNotStated)];
        Assert.Equal(toCorrect.Select(f => (f.Severity, f.Rule, f.Remedy)).Distinct().Count(), found.Count);
        Assert.All(toCorrect, finding =>
        {
            string[] parts = [finding.About.Name, finding.Message, finding.Remedy, finding.Rule, finding.Source.ToString()];
            Assert.Contains(found, card => parts.All(part => card.Value.Contains(part, StringComparison.Ordinal)));
            Assert.All(parts, part => Assert.Contains(part, markdown, StringComparison.Ordinal));
        });
        Severity[] order = [.. found.Select(f => Enum.Parse<Severity>(f.Attribute("class")!.Value, ignoreCase: true))];
        Assert.Equal(order.OrderDescending(), order);
    }

    // What is not stated is said once, in a table of its own, with where.
    [Theory]
    [MemberData(nameof(Names))]
    public void Page_HasWhatIsNotStated_InATableOfItsOwn(string name)
    {
        SiteReport report = Samples.Report(Samples.Read(name));
        string[][] rows = [.. Page(report).Descendants(Html + "tr").Select(r => r.Elements().Select(c => c.Value).ToArray()).Where(r => r.Length == 2 && r[0] != "What")];
        Assert.Equal(report.NotStated.Select(what => what.Key), rows.Select(r => r[0]));
        Assert.Equal(report.NotStated.Count > 0, Page(report).Descendants(Html + "h2").Any(h => h.Value == "Not stated"));
    }

    // Findings of one rule stand together: one heading, one remedy, a line for each place.
    [Fact]
    public void Findings_OfOneRule_ShareTheirRemedy()
    {
        XElement card = Assert.Single(Page(Samples.Report(Samples.Read("boatyard-as-found"))).Descendants(Html + "li"), l => l.Element(Html + "h3")?.Value == "Failure: voltage too low");
        Assert.Equal(["slipway foot", "storage west"], card.Element(Html + "ul")!.Elements().Select(l => l.Element(Html + "b")!.Value));
        Assert.Single(card.Elements(Html + "p"), p => p.Value.StartsWith("To do: ", StringComparison.Ordinal));
    }

    // The office camera sees 13.77 V at light load and accepts 13.2 V: 0.57 V too much, however far it is from too little.
    [Fact]
    public void ADeviceThatSeesTooMuch_HasNoMargin()
    {
        SiteReport report = Samples.Report(Samples.Read("boatyard-as-found"));
        string[][] rows = [.. Page(report).Descendants(Html + "tr").Select(r => r.Elements().Select(c => c.Value).ToArray())];
        Assert.Equal("−0.57", rows.Single(r => r.Length == 10 && r[0] == "office")[7]);
        DeviceAssessment[] tooHigh = [.. report.Assessment.Devices.Where(d => d.Worst.State == DeviceState.Up && d.AtLightLoad.Verdict == Verdict.Violated)];
        Assert.NotEmpty(tooHigh);
        Assert.All(tooHigh, d => Assert.StartsWith("−", rows.Single(r => r.Length == 10 && r[0] == d.Device.Name)[7], StringComparison.Ordinal));
    }

    [Fact]
    public void DateAuthorAndRevision_StandAtItsHead_WhereTheyAreGiven()
    {
        SiteAssessment assessment = Samples.Read("boat-shed").Assess();
        var report = new SiteReport(assessment, []) { Date = new DateOnly(2026, 3, 9), Author = "A. <Tern>", Revision = "B" };
        Assert.Contains("- Date: 2026-03-09\n- Author: A. &lt;Tern\\>\n- Revision: B\n", report.ToMarkdown(), StringComparison.Ordinal);
        Assert.Equal(["2026-03-09", "A. <Tern>", "B"], Page(report).Descendants(Html + "dd").Take(3).Select(d => d.Value));
        Assert.DoesNotContain("Revision", Samples.Report(Samples.Read("boat-shed")).ToMarkdown(), StringComparison.Ordinal);
    }

    // The boat shed's camera gets what it accepts: a picture of its volts along the run is drawn only where it is asked for.
    [Theory]
    [InlineData(false, 0)]
    [InlineData(true, 1)]
    public void Profiles_AreDrawnWhereSomethingIsWrong_OrWhereTheyAreAskedFor(bool hasEvery, int drawn)
    {
        var report = new SiteReport(Samples.Read("boat-shed").Assess(), []) { HasEveryProfile = hasEvery };
        Assert.Equal(drawn, Regex.Count(report.ToHtml(), "<title[^>]*>Volts along"));
        Assert.NotEqual(0, Regex.Count(Samples.Report(Samples.Read("boatyard-as-found")).ToHtml(), "<title[^>]*>Volts along"));
    }

    // The window is empty, and the report says who spoils it and what the others have.
    [Fact]
    public void EmptyTrimWindow_NamesItsSpoiler()
    {
        Site yard = Samples.Read("boatyard-as-found");
        TrimWindow window = yard.TrimWindowOf("yard box");
        Assert.True(window.IsEmpty);
        string markdown = Unescaped(Samples.Report(yard).ToMarkdown());
        Assert.Contains(window.OfOthers!.IsEmpty ? $"without {window.Spoiler} no set point works either" : $"without {window.Spoiler}: ", markdown, StringComparison.Ordinal);
    }

    // Whoever opens a cabinet must know what else is in it.
    [Fact]
    public void Box_NamesWhatSharesItsCabinet()
    {
        string markdown = Samples.Report(Samples.Read("boatyard-as-found")).ToMarkdown();
        Assert.Contains("crane cabinet, together with crane adapter", markdown, StringComparison.Ordinal);
        Assert.Contains("crane cabinet, together with old transformer", markdown, StringComparison.Ordinal);
    }

    // What a person at the box looks up: one row a device, with its worst volts and its margin.
    [Theory]
    [MemberData(nameof(Names))]
    public void Page_HasARowForEveryDevice(string name)
    {
        SiteReport report = Samples.Report(Samples.Read(name));
        string[][] rows = [.. Page(report).Descendants(Html + "tr").Select(r => r.Elements().Select(c => c.Value).ToArray())];
        Assert.All(report.Assessment.Devices, d =>
        {
            string[] row = rows.Single(r => r.Length == 10 && r[0] == d.Device.Name);
            Assert.Contains(row[1], new[] { d.Output.Number.ToString(CultureInfo.InvariantCulture), d.Box.Name });
            if (d.Worst.State != DeviceState.Up) return;
            Assert.Equal(d.Worst.Voltage.Volts.ToString("0.00", CultureInfo.InvariantCulture), row[4]);
            Assert.Equal(d.Worst.Condition.Name, row[5]);
        });
    }

    [Fact]
    public void Report_SaysWhatTheReceptacleOfABoxCarries() =>
        Assert.Contains("socket of the mooring inverter: day: 0.09 A of 0.08 A", Samples.Report(Samples.Read("boatyard-as-found")).ToMarkdown(), StringComparison.Ordinal);

    // A headline never says that a site may be energized, and says how much is not stated. The yard as found leaves much out.
    [Theory]
    [InlineData(null, "Not shown to be safe: {0} items not stated.")]
    [InlineData(Severity.Caution, "Not shown to be safe: {0} items not stated.")]
    [InlineData(Severity.Failure, "Correct it before use. Not shown to be safe: {0} items not stated.")]
    [InlineData(Severity.Danger, "Do not energize.")]
    public void Report_BeginsWithTheVerdictOfTheWorst(Severity? worst, string verdict)
    {
        SiteAssessment assessment = Samples.Read("boatyard-as-found").Assess();
        var report = new SiteReport(assessment, RuleSet.Standard.Check(assessment).Where(f => f.Severity <= worst).Reverse());
        string expected = string.Format(CultureInfo.InvariantCulture, verdict, report.NotStated.Count);
        Assert.True(report.NotStated.Count > 1);
        Assert.Equal(expected, Page(report).Descendants(Html + "strong").First().Value);
        Assert.Contains($"**{expected}**", report.ToMarkdown(), StringComparison.Ordinal);
    }

    // The boat shed states all that a verdict needs; without the voltages at which its camera turns on and drops out, one thing is missing.
    [Fact]
    public void Report_OfASiteThatStatesAll_SaysThatNoDangerWasFoundInWhatWasChecked()
    {
        const string starting = ",\n      \"starting\": { \"turnOn\": \"9 V\", \"dropOut\": \"8 V\", \"softStart\": \"unknown\" }";
        string stated = Samples.Text("boat-shed");
        Assert.Contains(starting, stated, StringComparison.Ordinal);
        SiteReport report = Samples.Report(SiteFile.Read(stated.Replace(starting, string.Empty, StringComparison.Ordinal)).Site!);
        Assert.Equal(["turn-on and drop-out voltage of the device"], report.NotStated.Select(what => what.Key));
        Assert.Equal("Not shown to be safe: 1 item not stated.", report.Headline);
        Assert.Equal("1 of 1 device works in every condition (start not checked)", report.DeviceSummary);

        report = Samples.Report(SiteFile.Read(stated).Site!);
        Assert.Empty(report.NotStated);
        Assert.Equal("No danger found in what was checked.", report.Headline);
        Assert.Equal("1 of 1 device works in every condition", report.DeviceSummary);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Page_CanBeHeardAndSteppedThrough(string name) => AssertAccessible(Page(Samples.Report(Samples.Read(name))));

    [Theory]
    [MemberData(nameof(Names))]
    public void Page_IsSelfContained(string name) => AssertSelfContained(Samples.Report(Samples.Read(name)).ToHtml());

    // Whatever people call their sites and things: nothing breaks out of its place, and the name is read as it was typed.
    [SeededProperty(Arbitrary = [typeof(RandomSites)], MaxTest = 60)]
    public void AnySite_GivesAWholeReport(Site site)
    {
        SiteReport report = Samples.Report(site);
        XElement page = Page(report);
        AssertAccessible(page);
        AssertSelfContained(report.ToHtml());
        Assert.Equal(PlainText.Of("Camera power at " + site.Name), page.Descendants(Html + "h1").Single().Value);
        string markdown = report.ToMarkdown(), plain = Unescaped(markdown);
        AssertTables(markdown);
        HashSet<string> firstCells = [.. page.Descendants(Html + "th").Select(c => c.Value)];
        Assert.All(report.Assessment.Devices, d => Assert.Contains(PlainText.Of(d.Device.Name), firstCells));
        Assert.All(report.Findings.Where(f => !f.IsNotStated), f => Assert.Contains(PlainText.Of(f.Message), plain, StringComparison.Ordinal));
        Assert.Equal(report.Findings.Where(f => !f.IsNotStated).Select(f => (f.Severity, f.Rule, f.Remedy)).Distinct().Count(), page.Descendants(Html + "h3").Count());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void MarkdownTables_AreWellFormed(string name) => AssertTables(Samples.Report(Samples.Read(name)).ToMarkdown());

    [Fact]
    public void Markdown_EscapesWhatItWouldTakeForItsOwn()
    {
        Site shed = Samples.Read("boat-shed");
        var named = new Site("a|b *c* <d> [e](f) `g`\n# h", shed.Conditions, shed.Boxes, shed.Runs, shed.Devices);
        Assert.StartsWith("# Camera power at a\\|b \\*c\\* &lt;d\\> \\[e\\](f) \\`g\\` \\# h\n", Samples.Report(named).ToMarkdown(), StringComparison.Ordinal);
    }

    [Fact]
    public void Nulls_AreRefusedByName()
    {
        SiteAssessment assessment = Samples.Read("boat-shed").Assess();
        Assert.Throws<ArgumentNullException>("assessment", () => new SiteReport((SiteAssessment)null!, []));
        Assert.Throws<ArgumentNullException>("evidence", () => new SiteReport((Evidence)null!, []));
        Assert.Throws<ArgumentNullException>("findings", () => new SiteReport(assessment, null!));
        Assert.Throws<ArgumentNullException>("findings", () => new SiteReport(assessment, [null!]));
    }

    private static XElement Page(SiteReport report)
    {
        string html = report.ToHtml();
        Assert.StartsWith("<!DOCTYPE html>\n<html lang=\"en\"", html, StringComparison.Ordinal);
        return XDocument.Parse(html).Root!;
    }

    private static void AssertAccessible(XElement page)
    {
        Assert.Equal("en", page.Attribute("lang")!.Value);
        Assert.Single(page.Descendants(Html + "main"));
        int[] levels = [.. page.Descendants().Where(e => e.Name.Namespace == Html && Heading().IsMatch(e.Name.LocalName)).Select(e => e.Name.LocalName[1] - '0')];
        Assert.Equal(1, levels[0]);
        Assert.DoesNotContain(levels.Zip(levels.Skip(1)), x => x.Second > x.First + 1 || x.Second == 1);
        string[] ids = [.. page.Descendants().Attributes("id").Select(a => a.Value)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(page.Descendants().Attributes("aria-labelledby").SelectMany(a => a.Value.Split(' ')), id => Assert.Contains(id, ids));
        Assert.All(page.Descendants(Html + "table"), table =>
        {
            Assert.NotEmpty(table.Element(Html + "caption")!.Value);
            Assert.All(table.Descendants(Html + "th"), th => Assert.Contains(th.Attribute("scope")!.Value, new[] { "col", "row" }));
            int columns = table.Element(Html + "thead")!.Descendants(Html + "th").Count();
            Assert.All(table.Element(Html + "tbody")!.Elements(Html + "tr"), row => Assert.Equal(columns, row.Elements().Count()));
        });
        Assert.All(page.Descendants(Html + "figure").Elements(), svg => Assert.Equal("img", svg.Attribute("role")!.Value));
    }

    private static void AssertSelfContained(string html)
    {
        XElement page = XDocument.Parse(html).Root!;
        Assert.DoesNotContain(page.Descendants(), e => e.Name.LocalName is "script" or "link" or "img" or "iframe" or "object" or "image" or "use" or "a");
        Assert.DoesNotContain(page.Descendants().Attributes(), a => a.Name.LocalName is "src" or "href" or "srcset" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        string style = page.Descendants(Html + "style").Single().Value;
        Assert.DoesNotContain("url(", style, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", style, StringComparison.Ordinal);

        // Read as HTML: nothing but a void element, or one of a picture, closes itself.
        Assert.DoesNotContain(page.Descendants().Where(e => e.Name.Namespace == Html && e.Name.LocalName != "meta"), e => e.IsEmpty);
        Assert.DoesNotContain('&', style);
    }

    private static void AssertTables(string markdown)
    {
        string[] lines = markdown.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith("| ", StringComparison.Ordinal)) continue;
            Assert.Empty(lines[i - 1]);
            int columns = Cells(lines[i]);
            Assert.Matches(@"^\|( -{3}:? \|)+$", lines[i + 1]);
            for (; lines[i].StartsWith("| ", StringComparison.Ordinal); i++) Assert.Equal(columns, Cells(lines[i]));
        }
    }

    private static int Cells(string row)
    {
        int bars = 0;
        for (int i = 0; i < row.Length; i++)
        {
            if (row[i] == '\\') i++;
            else if (row[i] == '|') bars++;
        }

        return bars - 1;
    }

    private static string Unescaped(string markdown)
    {
        var text = new StringBuilder();
        string html = markdown.Replace("&lt;", "<", StringComparison.Ordinal).Replace("&amp;", "&", StringComparison.Ordinal);
        for (int i = 0; i < html.Length; i++) text.Append(html[i] == '\\' && i + 1 < html.Length ? html[++i] : html[i]);
        return text.ToString();
    }

    [GeneratedRegex("^h[1-6]$")]
    private static partial Regex Heading();
}
