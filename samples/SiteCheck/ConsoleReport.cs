using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower;
using Spectre.Console;
using UnitsNet;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>Prints a solved site: what each device gets, how far each output and box is loaded, what was found.</summary>
internal sealed class ConsoleReport(IAnsiConsole console)
{
    public void Print(SiteAssessment assessment, IReadOnlyList<Finding> findings)
    {
        console.MarkupLineInterpolated($"[bold]{assessment.Site.Name}[/]");
        PrintConditions(assessment.Site.Conditions);
        foreach (BoxAssessment box in assessment.Boxes) PrintBox(assessment, box);
        PrintFindings(findings);
        console.WriteLine("Worked out, not measured: measure at commissioning. Mains wiring, enclosures and");
        console.WriteLine("batteries are for the local code and a licensed electrician.");
    }

    private void PrintConditions(IReadOnlyList<Condition> conditions)
    {
        console.WriteLine("Conditions, with the temperatures of cable and box:");
        for (int i = 0; i < conditions.Count; i++)
        {
            Surroundings at = conditions[i].At;
            console.WriteLine(Invariant($"  {Letter(i)}  {conditions[i].Name}, {Text(at.Cable)} and {Text(at.Box)}"));
        }

        console.WriteLine("Voltages are with each supply at the bottom of its tolerance, loads at the worse");
        console.WriteLine("end; Load A is of the whole output. Worst names its condition; \"loops\" restarts");
        console.WriteLine("for ever, \"off\" never comes up, \"none\" is more than the cable can carry, \"wrong\"");
        console.WriteLine("the wrong kind of current. Margin is to the lowest voltage accepted; \"over\" sees");
        console.WriteLine("too much, \"no start\" runs but would not start. CCA is copper-clad aluminium.");
    }

    private void PrintBox(SiteAssessment assessment, BoxAssessment box)
    {
        Supply supply = box.Box.Supply;
        BoxInCondition worst = box.Worst;
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]{box.Box.Name}[/]: {supply.Name} {Voltage(supply.Output)}");
        double used = worst.TotalCurrent.Amperes, rated = worst.DeratedRating.Amperes;
        console.WriteLine(Invariant($"  {(worst.IsDemandOnly ? "asked for " : "")}{used:0.00} A of {rated:0.00} A at {BoxText(box.Box, worst)} in {worst.Condition}{(rated > 0 ? Invariant($": {used / rated * 100:0} %") : "")}"));
        if (box.Outputs.Count == 0) return;
        if (supply.Output is DcOutput { Trim: not null }) PrintIndented(TrimText(assessment.Site.TrimWindowOf(box.Box.Name)));

        Table table = new Table().NoBorder();
        foreach (string heading in new[] { "Out", "Device", "Cable", "In a", "Worst", "Accepts", "Margin", "Load A" })
        {
            table.AddColumn(new TableColumn(new Text(heading, new Style(decoration: Decoration.Underline))).NoWrap().Padding(0, 0, 1, 0));
        }

        foreach (OutputAssessment output in box.Outputs)
        {
            foreach (DeviceAssessment device in assessment.Devices.Where(d => d.Output == output.Output && d.Box == output.Box))
            {
                table.AddRow([.. Row(assessment, output, device).Select(cell => new Text(cell))]);
            }
        }

        console.Write(table);
    }

    private static string BoxText(DistributionBox box, BoxInCondition worst)
    {
        string where = box.Cabinet is Cabinet cabinet ? $" {cabinet}" : string.Empty;
        if (worst.InsideTemperature is not Temperature inside) return $"{Text(worst.Condition.At.Box)} around it, unknown inside{where},";
        return worst.Heat is null ? Text(inside) : Invariant($"{inside.DegreesCelsius:0} °C inside{where}");
    }

    private static string[] Row(SiteAssessment assessment, OutputAssessment output, DeviceAssessment device)
    {
        DeviceInCondition worst = device.Worst;
        char letter = Letter(assessment.Site.Conditions.ToList().IndexOf(worst.Condition));
        return
        [
            output.Output.Number.ToString(CultureInfo.InvariantCulture),
            Short(device.Device.Name, 14),
            Short(CableText(device.Path), 18),
            Volts(device.InConditions[0]),
            Volts(worst) + " " + letter,
            worst.Accepted is VoltageRange accepted ? Invariant($"{accepted.Lowest.Volts:0.#}-{accepted.Highest.Volts:0.#}") : "-",
            Margin(device),
            Invariant($"{output.Worst.Current.Amperes:0.00}{(output.Worst.IsDemandOnly ? "?" : "")}/{output.Output.Limit.Amperes:0.##}"),
        ];
    }

    private void PrintFindings(IReadOnlyList<Finding> findings)
    {
        console.WriteLine();
        string count = string.Join(", ", Enum.GetValues<Severity>().Reverse()
            .Select(s => (s, n: findings.Count(f => f.Severity == s))).Where(x => x.n > 0).Select(x => $"{x.n} {x.s.ToString().ToLowerInvariant()}{(x.n == 1 || x.s == Severity.Danger ? "" : "s")}"));
        console.MarkupLineInterpolated($"[bold]Findings[/]: {(count.Length == 0 ? "none" : count)}");
        foreach (Finding finding in findings)
        {
            console.WriteLine();
            console.MarkupLineInterpolated($"[{Colour(finding.Severity)}]{finding.Severity.ToString().ToUpperInvariant()}[/] [bold]{finding.About.Name}[/] ({finding.Rule})");
            PrintIndented(finding.Message);
            PrintIndented("To do: " + finding.Remedy);
        }

        console.WriteLine();
    }

    private void PrintIndented(string text)
    {
        string line = " ";
        foreach (string word in text.Split(' '))
        {
            if (line.Length + 1 + word.Length > console.Profile.Width)
            {
                console.WriteLine(line);
                line = " ";
            }

            line += " " + word;
        }

        console.WriteLine(line);
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

    // The gauges on the way and its whole length, in the unit of the first length.
    private static string CableText(IReadOnlyList<SiteRun> path)
    {
        List<CableSegment> segments = [.. path.SelectMany(run => run.Run.Segments)];
        string sizes = string.Join("+", segments.Select(s => s.Cable.Outgoing.Size.ToString()).Distinct()).Replace(" AWG+", "+", StringComparison.Ordinal);
        if (segments.Exists(s => s.Cable.Outgoing.Material.IsCopperCladAluminium)) sizes += " CCA";
        Length total = segments.Select(s => s.OneWayLength).Aggregate((a, b) => a + b);
        return $"{sizes} {total.ToString("s1", CultureInfo.InvariantCulture)}";
    }

    private static string Volts(DeviceInCondition device) => device.State switch
    {
        DeviceState.Up => device.Voltage.Volts.ToString("0.00", CultureInfo.InvariantCulture),
        DeviceState.Restarting => "loops",
        DeviceState.NeverUp => "off",
        DeviceState.NoOperatingPoint => "none",
        _ => "wrong",
    };

    // Above the range there is no margin to speak of, however far the lowest voltage lies below.
    private static string Margin(DeviceAssessment device)
    {
        DeviceInCondition worst = device.Worst;
        if (worst.Accepted is VoltageRange accepted && device.LightLoadVoltage.Volts > accepted.Highest.Volts) return "over";
        if (worst.State == DeviceState.Up && !device.InConditions.All(c => c.WouldStart)) return "no start";
        return worst.State == DeviceState.Up ? worst.Margin.Volts.ToString("+0.00;-0.00", CultureInfo.InvariantCulture) : "-";
    }

    private static string Text(IQuantity quantity) => quantity.ToString("s4", CultureInfo.InvariantCulture);

    private static char Letter(int condition) => (char)('a' + condition);

    private static string Short(string text, int length) => text.Length <= length ? text : text[..(length - 1)] + "…";

    private static string Colour(Severity severity) => severity switch
    {
        Severity.Danger => "bold red",
        Severity.Failure => "red",
        Severity.Caution => "yellow",
        _ => "blue",
    };
}
