using System;
using System.Linq;
using System.Xml.Linq;
using CamPower.Commissioning;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Reports.Tests;

/// <summary>The sheet and the record on paper.</summary>
public class CommissioningReportTests
{
    private static CommissioningSheet Sheet { get; } = MakeSheet();

    private static CommissioningSheet MakeSheet(double volts = 12)
    {
        Temperature at = Temperature.FromDegreesCelsius(15);
        var box = DistributionBox.OfEqualOutputs("box <1>", new Supply("supply", new DcOutput(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(5),
            Ratio.FromPercent(2)), Derating.GenericEnclosed), 2, ElectricCurrent.FromAmperes(1));
        var dome = new Device("dome", DeviceKind.Camera,
            new ComponentDraw(Load.ConstantPower(Power.FromWatts(4)), infrared: Load.ConstantPower(Power.FromWatts(5))),
            dcInput: new VoltageRange(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2)));
        var run = new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.ClassB, ConductorMaterial.AnnealedCopper), Length.FromFeet(100));
        var site = new Site("shed", [Condition.Night(new Surroundings(at, at, at))], [box], [new SiteRun(RunOrigin.Output("box <1>", 1), "door", run)],
            [new SiteDevice("door camera", dome, "door")]);
        return new CommissioningSheet(site, SiteTolerance.Standard, Meter.Handheld, new Surroundings(at, at, at));
    }

    [Fact]
    public void BlankSheet_HasEveryReadingInOrder_WithRoomToWriteAndToSign()
    {
        string html = new CommissioningReport(new CommissioningRecord(Sheet, [])).ToHtml();
        XDocument page = XDocument.Parse(html["<!DOCTYPE html>\n".Length..]);
        XElement[] rows = [.. page.Descendants().Where(e => e.Name.LocalName == "tr" && e.Parent!.Name.LocalName == "tbody")];
        Assert.Equal(Sheet.Lines.Count, rows.Length);
        for (int i = 0; i < rows.Length; i++)
        {
            string[] cells = [.. rows[i].Elements().Select(c => c.Value)];
            Assert.Equal((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), cells[0]);
            Assert.Contains(Sheet.Lines[i].Point.Where, cells[1], StringComparison.Ordinal);
            Assert.Equal((Sheet.Lines[i].Step, Sheet.Lines[i].Safety), (cells[2], cells[3]));
            Assert.StartsWith("____", cells[6], StringComparison.Ordinal);
        }

        Assert.Contains("Signature", html, StringComparison.Ordinal);
        Assert.Contains("Never work alone on a ladder.", html, StringComparison.Ordinal);
        Assert.DoesNotContain("box <1>", html, StringComparison.Ordinal);
    }

    // Whoever carries the paper has nothing else: it says where to stop, what is dangerous and what to do about it, before anything else.
    [Fact]
    public void SheetOfADangerousPlan_SaysToStop_BeforeAnythingElse()
    {
        CommissioningSheet dangerous = MakeSheet(volts: 24);
        Finding danger = Assert.Single(dangerous.Dangers);
        var blank = new CommissioningReport(new CommissioningRecord(dangerous, []));
        string markdown = blank.ToMarkdown();
        int stop = markdown.IndexOf("## Do not energize", StringComparison.Ordinal), first = markdown.IndexOf("## What this is", StringComparison.Ordinal);
        Assert.InRange(stop, 1, first);
        Assert.Contains("The plan has 1 danger. Stop before \"Box on, nothing connected: the set point\"", markdown, StringComparison.Ordinal);
        Assert.Contains("## Box on, nothing connected: the set point", markdown, StringComparison.Ordinal);
        Assert.Contains("- door camera: box", markdown, StringComparison.Ordinal);
        Assert.Contains($"Fix: {danger.Remedy}", markdown, StringComparison.Ordinal);
        Assert.Contains("Stop before", blank.ToHtml(), StringComparison.Ordinal);
        Assert.DoesNotContain("Do not energize", new CommissioningReport(new CommissioningRecord(Sheet, [])).ToMarkdown(), StringComparison.Ordinal);
    }

    [Fact]
    public void Record_SaysItsVerdictFirst_AndMarksWhatIsOutside()
    {
        MeterReading[] all = [.. Sheet.Lines.Select(l => new MeterReading(l.Point, l.Expected))];
        string accepted = new CommissioningReport(new CommissioningRecord(Sheet, all, "A. Tern", "2026-03-09")).ToMarkdown();
        Assert.Contains("**Every reading was taken and is inside its band.**", accepted, StringComparison.Ordinal);
        Assert.Contains("Read by: A. Tern", accepted, StringComparison.Ordinal);
        Assert.DoesNotContain("OUTSIDE", accepted, StringComparison.Ordinal);
        string wrong = new CommissioningReport(new CommissioningRecord(Sheet, [.. all.SkipLast(1), new MeterReading(Sheet.Lines[^1].Point, ElectricPotential.FromVolts(9))])).ToMarkdown();
        Assert.Contains("**Not accepted: some readings are outside their band.**", wrong, StringComparison.Ordinal);
        Assert.Equal(2, wrong.Split("OUTSIDE").Length);
        string partly = new CommissioningReport(new CommissioningRecord(Sheet, all.Take(2))).ToMarkdown();
        Assert.Contains("**Not finished", partly, StringComparison.Ordinal);
    }
}
