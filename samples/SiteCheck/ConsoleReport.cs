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
        if (box.Supply.Output is DcOutput { Trim: not null }) page.Text(TrimText(report.Assessment.Site.TrimWindowOf(box.Name)), indent: 2);
        FaultTable.Write(page, [.. evidence.Faults.Where(o => o.Box == box)]);
    }

    private static void WriteBox(Page page, BoxAssessment box)
    {
        BoxInCondition worst = box.Worst;
        double used = worst.TotalCurrent.Amperes, rated = worst.DeratedRating.Amperes;
        string share = rated > 0 ? Invariant($" ({used / rated * 100:0} %)") : "";
        string feed = box.Box.FedFrom is string junction ? $", a converter fed from {junction}" : "";
        page.Text($"{box.Box.Name}: {box.Box.Supply.Name}, {Voltage(box.Box.Supply.Output)}{feed}. "
            + Invariant($"At worst it is asked for {used:0.00} A of {rated:0.00} A{share}: {worst.Condition}, {Warmth(box.Box, worst)}."));
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
        if (lowest is not null) page.Text($"On AC, deepest valley: {lowest.Device}, {lowest.Worst.Condition}: {lowest.Worst.Ac}.");
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

    // The middle leaves the most room on both sides.
    private static string TrimText(TrimWindow window)
    {
        if (!window.IsEmpty) return Invariant($"Set it to {window.Middle.Volts:0.00} V: {Ends(window)}.");
        string conflict = $"No set point is right for all: {Ends(window)}.";
        if (window.OfOthers is not TrimWindow others) return conflict;
        return others.IsEmpty
            ? $"{conflict} There is none without {window.Spoiler} either."
            : $"{conflict} {window.Spoiler} spoils it. For the others: {Ends(others)}.";
    }

    private static string Ends(TrimWindow window) => $"at least {Text(window.Lowest)}, at most {Text(window.Highest)}";

    private static string Voltage(SupplyOutput output) => output switch
    {
        DcOutput { OpenVoltage: ElectricPotential open } =>
            Invariant($"unregulated, {output.Nominal.Volts:0.##} V at its rated current and {open.Volts:0.##} V open"),
        DcOutput dc => Invariant($"set to {dc.SetPoint.Volts:0.##} V"),
        AcOutput { OpenVoltage: not null } plate => Invariant($"{output.Nominal.Volts:0.##} V AC, {(double)plate.RatedApparentPower.Voltamperes:0.#} VA"),
        _ => Invariant($"{output.Nominal.Volts:0.##} V AC"),
    };

    private static string Text(TrimLimit limit) => Invariant($"{limit.SetPoint.Volts:0.00} V ") + limit.Bound switch
    {
        TrimBound.SupplyRange => "(the end of its range)",
        TrimBound.HighestVoltage => $"({limit.Device}, light load)",
        _ => $"({limit.Device}, {limit.Condition})",
    };
}
