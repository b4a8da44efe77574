using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower;
using Spectre.Console;
using UnitsNet;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>What each device of a box gets through its cable, against what it accepts, and how far its output is loaded.</summary>
internal static class DeviceTable
{
    public const string Legend = """
        Voltages are with each supply at the bottom of its tolerance, loads at the worse
        end; Load A is of the whole output. Worst names its condition; "loops" restarts
        for ever, "off" never comes up, "none" is more than the cable can carry, "wrong"
        the wrong kind of current. Margin is to the lowest voltage accepted; "over" sees
        too much, "no start" runs but would not start. CCA is copper-clad aluminium.
        """;

    public static void Write(IAnsiConsole console, SiteAssessment assessment, BoxAssessment box)
    {
        var table = new PlainTable("Out", "Device", "Cable", "In a", "Worst", "Accepts", "Margin", "Load A");
        foreach (OutputAssessment output in box.Outputs)
        {
            foreach (DeviceAssessment device in assessment.Devices.Where(d => d.Output == output.Output && d.Box == output.Box))
            {
                table.Add(Row(assessment.Site, output, device));
            }
        }

        table.Unwrapped(0, 1, 2, 3, 4, 5, 6, 7).WriteTo(console);
    }

    private static string[] Row(Site site, OutputAssessment output, DeviceAssessment device)
    {
        DeviceInCondition worst = device.Worst;
        return
        [
            output.Output.Number.ToString(CultureInfo.InvariantCulture),
            Short(device.Device.Name, 14),
            Short(CableText(device.Path), 18),
            Volts(device.InConditions[0]),
            Volts(worst) + " " + ConditionList.LetterOf(worst.Condition, site),
            worst.Accepted is VoltageRange accepted ? Invariant($"{accepted.Lowest.Volts:0.#}-{accepted.Highest.Volts:0.#}") : "-",
            Margin(device),
            Invariant($"{output.Worst.Current.Amperes:0.00}{(output.Worst.IsDemandOnly ? "?" : "")}/{output.Output.Limit.Amperes:0.##}"),
        ];
    }

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
        DeviceState.SupplyOverloaded => "unknown",
        DeviceState.Restarting => "loops",
        DeviceState.NeverUp => "off",
        DeviceState.NoOperatingPoint => "none",
        _ => "wrong",
    };

    // Above the range there is no margin to speak of, however far the lowest voltage lies below.
    private static string Margin(DeviceAssessment device)
    {
        DeviceInCondition worst = device.Worst;
        if (device.AtLightLoad.Verdict == Verdict.Violated) return "over";
        if (worst.State == DeviceState.Up && !device.InConditions.All(c => c.WouldStart)) return "no start";
        return worst.State == DeviceState.Up ? worst.Margin.Volts.ToString("+0.00;-0.00", CultureInfo.InvariantCulture) : "-";
    }

    private static string Short(string text, int length) => text.Length <= length ? text : text[..(length - 1)] + "…";
}
