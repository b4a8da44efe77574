using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using System.Threading;
using System.Xml.Linq;
using CamPower.Reports.Charts;
using CamPower.Tests.Repository;
using OxyPlot;
using UnitsNet;

namespace CamPower.Reports.Tests;

/// <summary>What every chart keeps to, and what some of them must show.</summary>
public partial class ChartTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Names => [.. Samples.Charts().Keys];

    // The docs show these files: they are the same bytes on every machine.
    [Theory]
    [MemberData(nameof(Names))]
    public void Chart_IsTheCommittedPicture(string name) =>
        GeneratedPage.AssertCurrent($"docs/images/{name}.svg", Samples.Charts()[name].ToSvg() + "\n");

    [Theory]
    [MemberData(nameof(Names))]
    public void Chart_IsTheSameInEveryCulture(string name)
    {
        string expected = Samples.Charts()[name].ToSvg();
        CultureInfo before = Thread.CurrentThread.CurrentCulture;
        try
        {
            foreach (string culture in new[] { "de-DE", "tr-TR", "ar-SA", "sv-SE" })
            {
                Thread.CurrentThread.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Chart chart = Samples.Charts()[name];
                Assert.Equal(expected, chart.ToSvg());
            }
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Chart_HasARoleANameAndADescription(string name)
    {
        Chart chart = Samples.Charts()[name];
        XElement svg = XElement.Parse(chart.ToSvg("here"));
        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.Equal("here-title here-desc", svg.Attribute("aria-labelledby")!.Value);
        Assert.Equal(chart.Title, svg.Elements(Svg + "title").Single(e => e.Attribute("id")!.Value == "here-title").Value);
        Assert.Equal(chart.Description, svg.Elements(Svg + "desc").Single(e => e.Attribute("id")!.Value == "here-desc").Value);
        Assert.All(svg.Descendants().Attributes("id"), id => Assert.StartsWith("here-", id.Value, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Chart_HoldsNoScriptAndRefersToNothingOutside(string name)
    {
        XElement svg = XElement.Parse(Samples.Charts()[name].ToSvg());
        Assert.DoesNotContain(svg.DescendantsAndSelf(), e => e.Name.LocalName is "script" or "image" or "use" or "a" or "style");
        Assert.All(svg.DescendantsAndSelf().Attributes().Where(a => !a.IsNamespaceDeclaration), a => Assert.DoesNotContain("http", a.Value, StringComparison.Ordinal));
        HashSet<string> ids = [.. svg.Descendants().Attributes("id").Select(a => a.Value)];
        Assert.All(svg.Descendants().Attributes().SelectMany(a => Reference().Matches(a.Value)), m => Assert.Contains(m.Groups[1].Value, ids));
    }

    // With the widths of the widest usual font: nothing is cut at the edge.
    [Theory]
    [MemberData(nameof(Names))]
    public void EveryText_LiesInsideThePicture(string name)
    {
        XElement svg = XElement.Parse(Samples.Charts()[name].ToSvg());
        double width = Number(svg.Attribute("width")), height = Number(svg.Attribute("height"));
        var room = new TextRoom(width, height);
        Assert.All(svg.Descendants(Svg + "text"), text =>
        {
            (double x, double y, bool isUpright) = Place(text);
            if (isUpright) return;
            double length = room.MeasureText(text.Value, "", Number(text.Attribute("font-size")), Number(text.Attribute("font-weight"))).Width, left = x - (Anchor(text) * length);
            Assert.InRange(left, 0, width - length);
            Assert.InRange(y, 0, height);
        });
    }

    // The ticks of the axis say what height stands for which voltage: the line must end at the load's.
    [Fact]
    public void VoltageAlong_EndsAtTheVoltageOfTheLoad()
    {
        RunResult fed = Samples.SplicedRun.Feed(Samples.NineWatts, Samples.Volts(12), Samples.Warm);
        XElement svg = XElement.Parse(Chart.VoltageAlong(fed, Samples.Window).ToSvg());
        List<(double X, double Y)> line = svg.Descendants(Svg + "polyline").Select(Points).Single(p => p.Count == 4);
        (double at, double per) = VerticalScale(svg);
        Assert.Equal(12, at + (per * line[0].Y), 0.001);
        Assert.Equal(fed.LoadVoltage.Volts, at + (per * line[3].Y), 0.001);
        Assert.Equal(line[1].X, line[2].X);
        Assert.Equal(fed.Profile().Points[2].Voltage.Volts, at + (per * line[2].Y), 0.001);
    }

    [Fact]
    public void VoltageAgainstLength_SaysWhereACableEnds()
    {
        Chart chart = Chart.VoltageAgainstLength([Samples.EighteenAwg], Samples.NineWatts, Samples.Volts(12), Samples.Warm, Length.FromFeet(400), Samples.Window);

        // 12²/(4·9) = 4 Ω at the most; 1.68591 Ω are 120 ft of this pair at 40 °C (README): 284.7 ft, with 6 V left, half of 12 V.
        Assert.Contains("6.00 V at 284.7 ft, and no farther", chart.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void LoadLine_NamesBothRoots()
    {
        Chart chart = Chart.LoadLine(new CableRun(Samples.EighteenAwg, Length.FromFeet(120)).Feed(Samples.NineWatts, Samples.Volts(12), Samples.Warm));

        // 6 V ± √(36 − 9·1.68591) V.
        Assert.Contains("settles at 10.56 V", chart.Description, StringComparison.Ordinal);
        Assert.Contains("balances at 1.44 V", chart.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void LoadLine_WithoutAnOperatingPoint_SaysWhatTheRunCarries() => Assert.Contains(
        "no operating point. The run carries at most 12.3 W", Samples.Charts()["load-line-without-an-operating-point"].Description, StringComparison.Ordinal);

    // Whoever looks finds each device once, and each fault at its place, without color.
    [Fact]
    public void OneLine_NamesEveryDeviceOnceAndMarksWhatIsWrong()
    {
        SiteAssessment yard = Samples.Read("boatyard-as-found").Assess();
        IReadOnlyList<Finding> findings = RuleSet.Standard.Check(yard);
        foreach (BoxAssessment box in yard.Boxes)
        {
            List<string> texts = [.. XElement.Parse(Chart.OneLine(yard, box, findings).ToSvg()).Descendants(Svg + "text").Select(t => t.Value)];
            foreach (DeviceAssessment device in yard.Devices.Where(d => d.Box == box.Box))
            {
                int at = texts.IndexOf(device.Device.Name);
                Assert.Equal(at, texts.LastIndexOf(device.Device.Name));
                int marked = findings.Where(f => f.Severity > Severity.Note && f.About.Kind == SubjectKind.Device && f.About.Name == device.Device.Name).Select(f => f.Rule).Distinct().Count();
                Assert.Equal(marked, texts.Skip(at + 2).TakeWhile(t => t.Contains(": ", StringComparison.Ordinal)).Count());
            }
        }
    }

    [Fact]
    public void OneLine_ShowsTheReserve()
    {
        Chart drawn = Samples.OneLine("ferry", 0);
        Assert.Single(XElement.Parse(drawn.ToSvg()).Descendants(Svg + "text"), t => t.Value == "reserve: reserve supply");
        Assert.Contains("Reserve: reserve supply; each of the two supplies is behind a diode.", drawn.Description, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lock", "12 V 65 Ah", "its fuse: battery fuse")]
    [InlineData("lock-as-found", "12 V 12 Ah", "its fuse: no protective device")]
    public void OneLine_ShowsTheBatteryAndItsFuse(string name, string battery, string fuse)
    {
        Chart drawn = Samples.OneLine(name, 0);
        List<string> texts = [.. XElement.Parse(drawn.ToSvg()).Descendants(Svg + "text").Select(t => t.Value)];
        Assert.Single(texts, battery);
        Assert.Single(texts, fuse);
        Assert.Contains($"Battery: {battery}, {fuse}.", drawn.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void OneLine_WithoutFindingsHasNoMark()
    {
        SiteAssessment yard = Samples.Read("boatyard").Assess();
        Assert.DoesNotContain(XElement.Parse(Chart.OneLine(yard, yard.Boxes[0], []).ToSvg()).Descendants(Svg + "text"), t => t.Value.Contains("Caution", StringComparison.Ordinal));
    }

    // Who does not stay up comes first, then whoever is nearest to an end of its window: the numbers of the sentences tell.
    [Theory]
    [InlineData("boatyard", 0)]
    [InlineData("boatyard-as-found", 0)]
    [InlineData("boatyard-as-found", 1)]
    public void DeviceVolts_PutsFirstWhoDoesNotStayUpThenTheLeastMargin(string site, int box)
    {
        SiteAssessment yard = Samples.Read(site).Assess();
        string[] sentences = Chart.DeviceVolts(yard, yard.Boxes[box]).Description.Split(". ");
        Assert.Equal(yard.Devices.Count(d => d.Box == yard.Boxes[box].Box), sentences.Length);
        List<double> margins = [.. sentences.Select(s => VoltsAndWindow().Match(s)).Select(m => m.Success
            ? Math.Min(Of(m, 1) - Of(m, 3), Of(m, 4) - Of(m, 2))
            : double.NegativeInfinity)];
        Assert.Equal(yard.Devices.Count(d => d.Box == yard.Boxes[box].Box && d.Worst.State != DeviceState.Up), margins.Count(double.IsNegativeInfinity));
        Assert.Equal(margins.OrderBy(m => m), margins);

        static double Of(Match match, int group) => Parsed(match.Groups[group].Value);
    }

    [Fact]
    public void OutputLoad_HasAMarkerForEachConditionOfEachOutputAndOfTheSupply()
    {
        XElement svg = XElement.Parse(Samples.Charts()["output-load"].ToSvg());
        string[] legend = [.. svg.Descendants(Svg + "text").Select(t => t.Value)];
        BoxAssessment box = Samples.Read("boatyard").Assess().Boxes[0];
        Assert.All(box.InConditions, c => Assert.Contains(c.Condition.Name, legend));
        Assert.All(box.Outputs, o => Assert.Contains(legend, t => t.StartsWith(o.Output.Number.ToString(CultureInfo.InvariantCulture) + " ", StringComparison.Ordinal)));
        int circles = svg.Descendants(Svg + "ellipse").Count(), others = svg.Descendants(Svg + "polygon").Count() + svg.Descendants(Svg + "rect").Count();

        // Five conditions: two of them circles, one rectangle, one triangle and one diamond, each in a row of the 14 outputs and the supply, and in the legend.
        Assert.Equal(2 * (15 + 1), circles);
        Assert.True(others >= 3 * (15 + 1));
    }

    // Without color: by dashes, marker and whether it is filled.
    [Fact]
    public void TwelveSeries_AreToldApartWithoutColor() => Assert.Equal(ChartFrame.MostSeries, Enumerable.Range(0, ChartFrame.MostSeries)
        .Select(i => ChartFrame.Line(i, "x", [], hasMarkers: true))
        .Select(l => (string.Join(' ', l.Dashes ?? []), l.MarkerType, l.MarkerFill == OxyColors.White)).Distinct().Count());

    [Fact]
    public void NamesThatNobodyExpects_AreShortenedInThePictureAndWholeInItsWords()
    {
        string name = "a <camera> & \"its\" very, very long name beyond all that fits\u0001";
        Site shed = Samples.Read("boat-shed");
        var renamed = new Site(shed.Name, shed.Conditions, shed.Boxes, shed.Runs, shed.Devices.Select((d, i) => new SiteDevice(name + i, d.Model, d.At)));
        Chart chart = Chart.VoltageAlong(renamed.Assess().Devices.Select(d => d.Worst));
        Assert.Contains(name.Replace('\u0001', '\uFFFD'), chart.Description, StringComparison.Ordinal);
        Assert.Contains("a <camera> & \"its\" very", XElement.Parse(chart.ToSvg()).Value, StringComparison.Ordinal);
    }

    // 1.5 A less 10 % is what it carries; from 1.65 A on it has opened after 50 ms.
    [Fact]
    public void OpeningTimes_OfAnElectronicLimit_AreDrawn()
    {
        var limit = new ElectronicLimit("output limit", ElectricCurrent.FromAmperes(1.5), Ratio.FromPercent(10), Duration.FromMilliseconds(50),
            ElectricResistance.FromMilliohms(40), ElectricPotential.FromVolts(30));
        Chart chart = Chart.OpeningTimes(limit, Samples.Warm);
        Assert.Contains("It carries 1.35 A continuously.", chart.Description, StringComparison.Ordinal);
        Assert.Contains("has opened by then", XElement.Parse(chart.ToSvg()).Value, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatCannotBeDrawn_IsRefusedByName()
    {
        RunResult none = Samples.SplicedRun.Feed(Load.ConstantPower(Power.FromWatts(30)), Samples.Volts(12), Samples.Warm);
        RunResult bare = new CableRun(Samples.EighteenAwg, Length.Zero).Feed(Samples.NineWatts, Samples.Volts(12), Samples.Warm);
        Assert.Throws<InvalidOperationException>(() => Chart.VoltageAlong(none));
        Assert.Throws<ArgumentException>("devices", () => Chart.VoltageAlong([]));
        Assert.Throws<ArgumentNullException>("devices", () => Chart.VoltageAlong(null!));
        Assert.Throws<ArgumentException>("result", () => Chart.LoadLine(bare));
        Assert.Throws<InvalidOperationException>(() => Chart.LoadLine(default));
        Assert.Throws<ArgumentException>("device", () => Chart.OpeningTimes(ProtectiveDevice.None, Samples.Warm));
        Assert.Throws<ArgumentOutOfRangeException>("cables", () => Chart.VoltageAgainstLength([], Samples.NineWatts, Samples.Volts(12), Samples.Warm, Length.FromMeters(1)));
        Assert.Throws<ArgumentOutOfRangeException>("longest", () => Chart.VoltageAgainstLength([Samples.EighteenAwg], Samples.NineWatts, Samples.Volts(12), Samples.Warm, Length.Zero));
        Assert.Throws<ArgumentException>("idPrefix", () => Samples.Charts()["load-line"].ToSvg("1\" onload=\"x"));
    }

    // The marks of the left axis, and the labels that end beside them.
    private static (double At, double Per) VerticalScale(XElement svg)
    {
        double[] volts = [.. svg.Descendants(Svg + "text").Where(t => t.Attribute("text-anchor")?.Value == "end" && !Place(t).IsUpright).Select(t => Parsed(t.Value))];
        double[] marks = [.. svg.Descendants(Svg + "polyline").Select(Points).Where(p => p.Count == 2 && p[0].Y.Equals(p[1].Y) && p[0].X - p[1].X is > 0 and < 10).Select(p => p[0].Y)];
        Assert.Equal(volts.Length, marks.Length);
        double per = (volts[^1] - volts[0]) / (marks[^1] - marks[0]);
        return (volts[0] - (per * marks[0]), per);
    }

    private static List<(double X, double Y)> Points(XElement line) =>
        [.. line.Attribute("points")!.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split(',')).Select(p => (Parsed(p[0]), Parsed(p[1])))];

    private static (double X, double Y, bool IsUpright) Place(XElement text)
    {
        string transform = text.Attribute("transform")!.Value;
        string[] numbers = transform[(transform.IndexOf('(', StringComparison.Ordinal) + 1)..transform.IndexOf(')', StringComparison.Ordinal)].Split(',');
        return (Parsed(numbers[0]), Parsed(numbers[1]), transform.Contains("rotate", StringComparison.Ordinal));
    }

    private static double Anchor(XElement text) => text.Attribute("text-anchor")?.Value switch { "middle" => 0.5, "end" => 1, _ => 0 };

    private static double Number(XAttribute? attribute) => Parsed(attribute!.Value);

    private static double Parsed(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@": ([\d.]+) V to ([\d.]+) V, accepts ([\d.]+) V to ([\d.]+) V")]
    private static partial Regex VoltsAndWindow();

    [GeneratedRegex(@"url\(#([^)]*)\)")]
    private static partial Regex Reference();
}
