using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower;
using CamPower.Mains;
using Spectre.Console;
using UnitsNet;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>Prints a solved site: box by box what each device gets, how far all is loaded and what faults do; then what was found.</summary>
internal sealed class ConsoleReport(IAnsiConsole console)
{
    public void Print(Evidence evidence, IReadOnlyList<Finding> findings)
    {
        SiteAssessment assessment = evidence.Assessment;
        console.MarkupLineInterpolated($"[bold]{assessment.Site.Name}[/]");
        ConditionList.Write(console, assessment.Site);
        console.WriteLine(DeviceTable.Legend);
        console.WriteLine(FaultTable.Legend);
        foreach (BoxAssessment box in assessment.Boxes) PrintBox(evidence, box);
        PrintOutlets(evidence.Outlets);
        FindingList.Write(console, findings);
        console.WriteLine("Worked out, not measured: measure at commissioning. Mains wiring, enclosures and");
        console.WriteLine("batteries are for the local code and a licensed electrician.");
    }

    private void PrintBox(Evidence evidence, BoxAssessment box)
    {
        Supply supply = box.Box.Supply;
        BoxInCondition worst = box.Worst;
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]{box.Box.Name}[/]: {supply.Name} {Voltage(supply.Output)}");
        double used = worst.TotalCurrent.Amperes, rated = worst.DeratedRating.Amperes;
        console.WriteLine(Invariant($"  {(worst.IsDemandOnly ? "asked for " : "")}{used:0.00} A of {rated:0.00} A at {BoxText(box.Box, worst)} in {worst.Condition}{(rated > 0 ? Invariant($": {used / rated * 100:0} %") : "")}"));
        if (box.Outputs.Count == 0) return;
        if (supply.Output is DcOutput { Trim: not null }) console.WriteIndented(TrimText(evidence.Assessment.Site.TrimWindowOf(box.Box.Name)));
        DeviceTable.Write(console, evidence.Assessment, box);
        FaultTable.Write(console, [.. evidence.Faults.Outputs.Where(o => o.Box == box.Box)]);
    }

    private void PrintOutlets(IReadOnlyList<OutletAssessment> outlets)
    {
        if (outlets.Count > 0) console.WriteLine("\nOutlets, and what may be plugged in:");
        foreach (OutletAssessment outlet in outlets) console.WriteIndented(outlet.ToString());
    }

    private static string BoxText(DistributionBox box, BoxInCondition worst)
    {
        string where = box.Cabinet is Cabinet cabinet ? $" {cabinet}" : string.Empty;
        if (worst.InsideTemperature is not Temperature inside) return $"{Text(worst.Condition.At.Box)} around it, unknown inside{where},";
        return worst.Heat is null ? Text(inside) : Invariant($"{inside.DegreesCelsius:0} °C inside{where}");
    }

    // Two digits: no meter in the field shows millivolts. The middle leaves the most room on both sides.
    private static string TrimText(TrimWindow window) => window.IsEmpty
        ? Invariant($"Trim: none is right, {window.Conflict.Volts:0.00} V short: at least {Text(window.Lowest)}, at most {Text(window.Highest)}")
        : Invariant($"Trim to {window.Middle.Volts:0.00} V: {Text(window.Lowest)} to {Text(window.Highest)}");

    private static string Voltage(SupplyOutput output) =>
        output is DcOutput dc ? $"set to {Text(dc.SetPoint)}" : $"{Text(output.Nominal)} AC";

    private static string Text(TrimLimit limit) => Invariant($"{limit.SetPoint.Volts:0.00} ") + limit.Bound switch
    {
        TrimBound.SupplyRange => "(as far as it goes)",
        TrimBound.HighestVoltage => $"({limit.Device}, light load)",
        _ => $"({limit.Device}, {limit.Condition})",
    };

    private static string Text(IQuantity quantity) => quantity.ToString("s4", CultureInfo.InvariantCulture);
}
