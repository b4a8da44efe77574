using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower;
using CamPower.Reports;

namespace SiteCheck;

/// <summary>The schedule of a site with what each device gets, as CSV by RFC 4180: a row for each device, units in the headings.</summary>
/// <remarks>The first columns are those of a schedule that <see cref="CamPower.Files.SiteSchedule"/> reads; it passes over the others.</remarks>
internal static class Schedule
{
    private static readonly string[] Headings =
    [
        "name", "model", "box", "output", "cable", "length", "lowest voltage (V)", "highest voltage (V)", "accepts from (V)", "accepts to (V)",
        "output current (A)", "output limit (A)", "verdict",
    ];

    public static string Of(SiteReport report) => string.Concat(
        DeviceLine.Of(report.Assessment, report.Assessment.Boxes).Select(line => Cells(line, report.Findings)).Prepend(Headings).Select(Row));

    private static string[] Cells(DeviceLine line, IReadOnlyList<Finding> findings)
    {
        DeviceAssessment device = line.Device;
        CableSegment[] segments = [.. device.Path.SelectMany(run => run.Run.Segments)];
        VoltageRange? accepted = device.Worst.Accepted;
        return
        [
            device.Device.Name,
            device.Device.Model.Name,
            line.Box.Box.Name,
            line.Output.Output.Number.ToString(CultureInfo.InvariantCulture),
            string.Join(" + ", segments.Select(s => s.Cable.Name ?? s.Cable.ToString())),
            segments.Length == 1 ? Spoken.Exact(segments[0].OneWayLength) : Spoken.Distance(device.Path),
            device.Worst.State == DeviceState.Up ? Number(device.Worst.Voltage.Volts) : "",
            device.Worst.State == DeviceState.WrongCurrent ? "" : Number(device.LightLoadVoltage.Volts),
            accepted is null ? "" : Number(accepted.Lowest.Volts),
            accepted is null ? "" : Number(accepted.Highest.Volts),
            Number(line.Output.Worst.Current.Amperes),
            Number(line.Output.Output.Limit.Amperes),
            line.Verdict(findings),
        ];
    }

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Row(string[] cells) => string.Join(',', cells.Select(Quoted)) + "\r\n";

    private static string Quoted(string cell) =>
        cell.AsSpan().ContainsAny(",\"\r\n") ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
}
