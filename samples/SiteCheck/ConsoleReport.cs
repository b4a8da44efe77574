using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;
using CamPower.Backup;
using CamPower.Mains;
using CamPower.Reports;
using UnitsNet;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>A checked site as text: the verdict, what was found, what is not known, then what each device gets, box by box.</summary>
internal sealed class ConsoleReport(SiteReport report, Evidence evidence, int width)
{
    /// <summary>Some five screens; what does not fit is left to the details.</summary>
    private const int MostLines = 120;

    public Page Page(bool hasDetails) => hasDetails
        ? Page(Shown.Everything)
        : Shown.InBrief.Select(Page).FirstOrDefault(page => page.Lines.Count <= MostLines) ?? Page(Shown.InBrief[^1]);

    private Page Page(Shown shown)
    {
        var page = new Page(width);
        WriteVerdict(page);
        FindingList.Write(page, report.Findings, shown);
        RemedyList.Write(page, report);
        UnstatedList.Write(page, report, shown);
        if (shown.IsEverything) ConditionList.Write(page, report.Assessment.Site);
        WriteBoxes(page, shown);
        if (shown.IsEverything) WriteReceptacles(page, evidence.Receptacles);
        if (shown.IsEverything) WriteMains(page);
        WriteEnd(page, shown);
        return page;
    }

    private void WriteVerdict(Page page)
    {
        page.Line(report.Assessment.Site.Name);
        page.Line(report.Headline, ConsoleColor.White);
        page.Text(report.DeviceSummary + ".");
        page.Text(report.Findings.Count == 0 ? "No findings." : report.FindingSummary + ":");
        if (report.Findings.Count > 0) page.Blank();
    }

    private void WriteBoxes(Page page, Shown shown)
    {
        List<BoxAssessment> used = [.. report.Assessment.Boxes.Where(b => b.Outputs.Count > 0)];
        if (!shown.HasWorkingDevices)
        {
            page.Blank();
            DeviceTable.WriteNotWorking(page, report, used);
            return;
        }

        List<BoxAssessment> single = shown.IsEverything ? [] : [.. used.Where(b => b.Outputs.Count == 1)];
        foreach (BoxAssessment box in used.Except(single))
        {
            page.Blank();
            WriteBox(page, box);
            WriteBattery(page, box.Box);
            WriteAlternating(page, box.Box);
            DeviceTable.Write(page, report, box);
            if (shown.IsEverything) WriteDetails(page, box.Box);
        }

        if (single.Count == 0) return;
        page.Blank();
        DeviceTable.Write(page, report, single);
    }

    private void WriteDetails(Page page, DistributionBox box)
    {
        if (box.Supply.Output is DcOutput { Trim: not null }) page.Text(TrimText(box, report.Assessment.Site.TrimWindowOf(box.Name)), indent: 2);
        FaultTable.Write(page, [.. evidence.Faults.Where(o => o.Box == box)]);
    }

    private static void WriteBox(Page page, BoxAssessment box)
    {
        BoxInCondition worst = box.Worst;
        double used = worst.TotalCurrent.Amperes, rated = worst.DeratedRating.Amperes;
        string share = rated > 0 ? Invariant($" ({used / rated * 100:0} %)") : "";
        string feed = box.Box.FedFrom is string junction ? $", a converter fed from {junction}" : "";
        string head = $"{box.Box.Name}: {box.Box.Supply.Name}, {Voltage(box.Box.Supply)}{feed}. ";
        if (!(rated > 0))
        {
            page.Text($"{head}Its supply may not run: {Warmth(box.Box, worst)}{Ends(worst)} ({worst.Condition}).");
            return;
        }

        string derated = rated < box.Box.Supply.Output.RatedCurrent.Amperes ? Invariant($" Rated {box.Box.Supply.Output.RatedCurrent.Amperes:0.##} A.") : "";
        page.Text(head + Invariant($"Largest load {used:0.00} A of {rated:0.00} A{share}, in {worst.Condition}, {Warmth(box.Box, worst)}.{derated}"));
    }

    private void WriteBattery(Page page, DistributionBox box)
    {
        if (evidence.Backups.FirstOrDefault(b => b.Box == box) is BackupAssessment backup) page.Text($"On battery: {backup}.");
    }

    // The one whose capacitor falls lowest.
    private void WriteAlternating(Page page, DistributionBox box)
    {
        DeviceAssessment? lowest = report.Assessment.Devices.Where(d => d.Box == box && d.Worst.Ac?.Valley is not null)
            .MinBy(d => d.Worst.Ac!.Valley!.Value.Volts);
        if (lowest is not null) page.Text($"Lowest rectified voltage at {lowest.Device} ({lowest.Worst.Condition}): {lowest.Worst.Ac}.");
    }

    private static void WriteReceptacles(Page page, IReadOnlyList<ReceptacleAssessment> receptacles)
    {
        if (receptacles.Count == 0) return;
        page.Blank();
        page.Line("What the boxes take from the line:");
        foreach (ReceptacleAssessment receptacle in receptacles) page.Text(receptacle.ToString(), indent: 2);
    }

    private void WriteMains(Page page)
    {
        foreach (BreakerAssessment breaker in evidence.Breakers) page.Text(breaker.ToString(), indent: 2);
        foreach (UninterruptibleAssessment standby in evidence.Uninterruptible) page.Text(standby.ToString(), indent: 2);
        if (report.Assessment.Site.Conditions.Any(c => c.HoursAYear is not null)) page.Text(evidence.Energy.ToString(), indent: 2);
    }

    private static void WriteEnd(Page page, Shown shown)
    {
        page.Blank();
        page.Text("Calculated, not measured: measure at commissioning. Leave mains wiring, enclosures and batteries to a licensed electrician, and follow the local code.");
        if (!shown.IsEverything) page.Text($"{shown.LeftOut}--details shows everything, --help the other forms.");
    }

    private static string Warmth(DistributionBox box, BoxInCondition worst)
    {
        if (worst.InsideTemperature is not Temperature inside) return $"{Spoken.Celsius(worst.Condition.At.Box)} around it, not known inside";
        string where = worst.Heat is null ? "around the supply" : box.Cabinet is Cabinet cabinet ? $"inside {cabinet}" : "inside";
        return $"{Spoken.Celsius(inside)} {where}";
    }

    // A range, and no order: a box that is right stays as it is set, and one with a battery at its float voltage.
    private static string TrimText(DistributionBox box, TrimWindow window)
    {
        if (window.IsEmpty) return $"Set point: {window.Summary}.";
        TrimLimit lowest = window.Lowest, highest = window.Highest;
        bool isWhole = lowest.Bound == TrimBound.SupplyRange && highest.Bound == TrimBound.SupplyRange;
        if (isWhole && box.Battery is null) return Invariant($"Set point: the whole range of the supply works, {lowest.SetPoint.Volts:0.00} V to {highest.SetPoint.Volts:0.00} V.");
        if (box.Battery is not Battery battery) return Invariant($"Set point: {window.Summary} works; middle {window.Middle.Volts:0.00} V.");
        ElectricPotential right = battery.Cells * battery.Chemistry.Floating;
        return $"Set point: {window.Summary} works. " + (window.Contains(right)
            ? Invariant($"Keep it at the float voltage of the battery, {right.Volts:0.00} V.")
            : Invariant($"The float voltage of the battery, {right.Volts:0.00} V, is outside it."));
    }

    // What the supply is rated for, where the air is outside it.
    private static string Ends(BoxInCondition box) => box switch
    {
        { HottestAir: { Verdict: Verdict.Violated, Limit: Temperature most } } => $", rated up to {Spoken.Celsius(most)}",
        { ColdestAir: { Verdict: Verdict.Violated, Limit: Temperature least } } => $", rated from {Spoken.Celsius(least)} up",
        _ => "",
    };

    private static string Voltage(Supply supply) => supply.Output is DcOutput { OpenVoltage: ElectricPotential open }
        ? Invariant($"{supply.Output.Nominal.Volts:0.##} V at rated current, {open.Volts:0.##} V with no load")
        : Voltage(supply.Output);

    private static string Voltage(SupplyOutput output) => output switch
    {
        DcOutput dc => Invariant($"set to {dc.SetPoint.Volts:0.##} V"),
        AcOutput { OpenVoltage: not null } plate => Invariant($"{output.Nominal.Volts:0.##} V AC, {(double)plate.RatedApparentPower.Voltamperes:0.#} VA"),
        _ => Invariant($"{output.Nominal.Volts:0.##} V AC"),
    };
}
