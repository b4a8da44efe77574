using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Sections;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Diagrams;

/// <summary>A box with its outputs, runs and devices on one line each, and what is wrong at its place.</summary>
internal sealed class OneLineDiagram
{
    private const double Supply = 85, Bus = 190, Fuse = 225, FirstRun = 385, RunRoom = 165, DeviceRoom = 300, DeviceLead = 16, Margin = 10;
    private const double Row = 44, Below = 32, SupplyRoom = 160, OutputRoom = FirstRun - Bus - 60;
    private readonly SiteAssessment _assessment;
    private readonly BoxAssessment _box;
    private readonly IReadOnlyList<Finding> _findings;
    private readonly ILookup<string, SiteRun> _after;
    private readonly ILookup<string, DeviceAssessment> _at;
    private readonly double _deviceX;
    private readonly DiagramPen _pen = new();
    private readonly List<string> _words = [];
    private double _y = 34;

    private OneLineDiagram(SiteAssessment assessment, BoxAssessment box, IReadOnlyList<Finding> findings)
    {
        _assessment = assessment;
        _box = box;
        _findings = findings;
        _after = assessment.Site.Runs.Where(r => r.From.JunctionName is not null)
            .ToLookup(r => r.From.JunctionName!, StringComparer.Ordinal);
        _at = assessment.Devices.Where(d => d.Box == box.Box).ToLookup(d => d.Device.At, StringComparer.Ordinal);
        int deepest = _at.SelectMany(d => d).Select(d => d.Path.Count).DefaultIfEmpty(1).Max();
        _deviceX = FirstRun + (deepest * RunRoom) + DeviceLead;
    }

    internal static Chart Of(SiteAssessment assessment, BoxAssessment box, IReadOnlyList<Finding> findings) =>
        new OneLineDiagram(assessment, box, findings).Drawn();

    private Chart Drawn()
    {
        double top = _y;
        foreach (OutputAssessment output in _box.Outputs) Output(output);
        double bottom = Math.Max(_y, top + SupplyAt(top));
        return new Chart($"{_box.Box}, one-line diagram", string.Join(" ", _words), _pen.ToSvg(_deviceX + DeviceRoom, bottom + Margin));
    }

    // The supply beside the first output, its numbers and what is wrong with the box below it.
    private double SupplyAt(double y)
    {
        BoxInCondition worst = _box.Worst;
        _pen.Supply(Supply, y, _box.Box.Supply.Output.Kind);
        if (_box.Outputs.Count > 0) _pen.Line(Supply + 15, y, Bus, y);
        string load = Invariant($"{worst.TotalCurrent.Amperes:0.00} A of {worst.DeratedRating.Amperes:0.00} A");
        if (_box.Box.Reserve is Supply reserve) _words.Add($"Reserve: {reserve}; each of the two supplies is behind a diode.");
        double below = 30 + BatteryAt(y);
        foreach (string text in Given(load).OfType<string>())
        {
            _pen.Text(Margin, y + below, text, SupplyRoom);
            below += 14;
        }

        below -= 2;
        if (_box.Box.Receptacle is { Breaker: CircuitBreaker breaker } receptacle)
        {
            _pen.Text(Margin, y + below + 2, $"on {receptacle}, {breaker}", SupplyRoom);
            IReadOnlyList<DiagramMark> mains =
                [.. MarksOf(SubjectKind.Receptacle, receptacle.Name), .. MarksOf(SubjectKind.Breaker, breaker.Name)];
            below += 14 + _pen.Marks(Margin, y + below + 14, mains, SupplyRoom);
        }

        if (_box.Box.Receptacle?.Uninterruptible is UninterruptibleSupply standby)
        {
            _pen.Text(Margin, y + below + 2, $"behind {standby}", SupplyRoom);
            below += 14 + _pen.Marks(Margin, y + below + 14, MarksOf(SubjectKind.Uninterruptible, standby.Name), SupplyRoom);
        }

        return below + _pen.Marks(Margin, y + below, MarksOf(SubjectKind.Box, _box.Box.Name), SupplyRoom);
    }

    // What is written under the supply.
    private string?[] Given(string load) =>
    [
        _box.Box.Supply.Name,
        load,
        _box.Box.Supply.Output is DcOutput { OpenVoltage: ElectricPotential open }
            ? Invariant($"unregulated, {open.Volts:0.#} V open")
            : null,
        _box.Box.FedFrom is string junction ? $"converter, fed from {junction}" : null,
        _box.Box.Reserve is Supply reserve ? $"reserve: {reserve}" : null,
        _box.Box.Battery?.Name,
        FuseOfBattery,
    ];

    private string? FuseOfBattery => _box.Box.Battery is null ? null
        : _box.Box.BatteryProtection is ProtectiveDevice fuse ? $"its fuse: {fuse}" : "its fuse: not stated";

    // On the line between the supply and the outputs; gives the height that it takes.
    private double BatteryAt(double y)
    {
        if (_box.Box.Battery is not Battery battery) return 0;
        _words.Add($"Battery: {battery.Name}, {FuseOfBattery}.");
        return _pen.Battery((Supply + Bus) / 2, y, _box.Box.BatteryProtection);
    }

    private void Output(OutputAssessment output)
    {
        double y = _y;
        SiteRun[] runs = [.. _assessment.Site.Runs.Where(
            r => string.Equals(r.From.BoxName, _box.Box.Name, StringComparison.Ordinal) && r.From.OutputNumber == output.Output.Number)];
        IReadOnlyList<DiagramMark> marks = MarksOf(SubjectKind.Output, Subject.Of(_box.Box, output.Output).Name);
        _pen.Text(Bus + 5, y - 4, Invariant($"{output.Output.Number}"), 24, isBold: true);
        _pen.Line(Bus, y, FirstRun, y);
        _pen.Protection(Fuse, y, output.Output.Protection);
        _pen.Text(Bus + 54, y - 5, output.Output.Protection?.Name ?? "not stated", OutputRoom);
        _pen.Text(Bus + 54, y + 14, Invariant($"{output.Worst.Current.Amperes:0.00} A of {output.Output.Limit.Amperes:0.##} A"),
            OutputRoom);
        double least = y + Row + (_pen.Marks(Bus + 10, y + 30, marks, FirstRun - Bus));
        foreach (SiteRun run in runs)
        {
            if (_y > y) _pen.Line(FirstRun, y, FirstRun, _y);
            Branch(run, FirstRun);
        }

        _y = Math.Max(_y, least);
        _pen.Line(Bus, 34, Bus, y);
    }

    // A run, then what hangs at its end: each device and each further run on a line of its own.
    private void Branch(SiteRun run, double x)
    {
        double y = _y, end = x + RunRoom;
        _pen.Line(x, y, end, y);
        _pen.Text(x + 6, y - 5, Said.Cable([run]), RunRoom - 10);
        double least = y + Below + _pen.Marks(x + 6, y + 12, MarksOf(SubjectKind.Run, run.ToString()), RunRoom);
        DeviceAssessment[] devices = [.. _at[run.To]];
        SiteRun[] further = [.. _after[run.To]];
        if (devices.Length + further.Length > 1) _pen.Junction(end, y);
        foreach (DeviceAssessment device in devices)
        {
            if (_y > y) _pen.Line(end, y, end, _y);
            Device(device, end);
        }

        foreach (SiteRun next in further)
        {
            if (_y > y) _pen.Line(end, y, end, _y);
            Branch(next, end);
        }

        if (devices.Length + further.Length == 0) _y += Row;
        _y = Math.Max(_y, least);
    }

    private void Device(DeviceAssessment device, double x)
    {
        if (_deviceX > x) _pen.Line(x, _y, _deviceX, _y);
        _pen.Device(_deviceX, _y, device.Device.Model.Kind);
        string volts = Volts(device);
        _pen.Text(_deviceX + 32, _y - 2, device.Device.Name, DeviceRoom - 40, isBold: true);
        _pen.Text(_deviceX + 32, _y + 11, volts, DeviceRoom - 40);
        IReadOnlyList<DiagramMark> marks = MarksOf(SubjectKind.Device, device.Device.Name);
        _words.Add($"{device.Device.Name}: {volts}{string.Concat(marks.Select(m => "; " + m.Words))}.");
        _y += Math.Max(Row, 28 + _pen.Marks(_deviceX + 32, _y + 22, marks, DeviceRoom - 40));
    }

    private static string Volts(DeviceAssessment device)
    {
        DeviceInCondition worst = device.Worst;
        string accepted = worst.Accepted is VoltageRange range ? $"accepts {Said.Range(range)} V" : "accepts no such current";
        return worst.State == DeviceState.Up
            ? $"{Said.Volts(worst.Voltage)} to {Said.Volts(device.LightLoadVoltage)} V; {accepted}{Valley(worst)}"
            : $"{Said.State(worst.State)}; {accepted}";
    }

    private static string Valley(DeviceInCondition device) =>
        device.Ac?.Valley is UnitsNet.ElectricPotential valley ? $"; valley {Said.Volts(valley)} V" : string.Empty;

    private IReadOnlyList<DiagramMark> MarksOf(SubjectKind kind, string name)
    {
        IReadOnlyList<DiagramMark> marks = DiagramMark.Of(_findings, kind, name);
        if (kind != SubjectKind.Device) _words.AddRange(marks.Select(m => $"{name}: {m.Words}."));
        return marks;
    }
}
