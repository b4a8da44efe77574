using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower;
using CamPower.Commissioning;
using CamPower.Files;
using CamPower.Reports;
using CamPower.Tolerance;
using UnitsNet;

namespace SiteCheck;

/// <summary>The sheet of a site, and what a meter showed against it.</summary>
internal static class CommissioningRun
{
    private static readonly Temperature Usual = Temperature.FromDegreesCelsius(20);

    public static ExitStatus Run(Site site, Arguments arguments)
    {
        ReadingsFileResult? read = arguments.ReadingsPath is string readings ? ReadingsFile.Read(File.ReadAllText(readings), site) : null;
        if (read is { Errors.Count: > 0 })
        {
            Console.Error.WriteLine($"{arguments.ReadingsPath} cannot be read:");
            foreach (SiteFileError error in read.Errors) Console.Error.WriteLine($"  {error}");
            return ExitStatus.Unusable;
        }

        if (arguments.Symptoms.FirstOrDefault(s => s.Device is string name && site.Devices.All(d => d.Name != name)) is Symptom strange)
        {
            Console.Error.WriteLine($"--symptom: the site has no device named {strange.Device}.");
            return ExitStatus.Unusable;
        }

        Temperature at = arguments.At ?? Usual;
        var sheet = new CommissioningSheet(site, SiteTolerance.Standard, Meter.Handheld, read?.At ?? new Surroundings(at, at, at));
        string? on = arguments.Date is DateOnly date ? date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) : null;
        var record = new CommissioningRecord(sheet, read?.Readings ?? [], arguments.Author ?? read?.By, on ?? read?.On);
        if (arguments.SheetPath is string path) File.WriteAllText(path, TextOf(record, path));
        DiagnosisReport? diagnosis = NeedsDiagnosis(record, arguments)
            ? new DiagnosisReport(record, sheet.Diagnose(record.Readings, arguments.Symptoms))
            : null;
        if (arguments.Printed == Printed.Json && diagnosis is not null) PrintJson(diagnosis);
        else Terminal.Write(PageOf(record, diagnosis, arguments));
        return StatusOf(record, hasReadings: read is not null);
    }

    // A program that asks for JSON is answered, whether or not something is wrong.
    private static bool NeedsDiagnosis(CommissioningRecord record, Arguments arguments) => arguments.Symptoms.Count > 0
        || record.Count(ReadingVerdict.Outside) + record.Count(ReadingVerdict.Impossible) > 0
        || (arguments.Printed == Printed.Json && record.Readings.Count > 0);

    private static void PrintJson(DiagnosisReport diagnosis)
    {
        using (Stream output = Console.OpenStandardOutput()) diagnosis.WriteJson(output);
        Console.WriteLine();
    }

    private static string TextOf(CommissioningRecord record, string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".html" => new CommissioningReport(record).ToHtml(),
        ".md" => new CommissioningReport(record).ToMarkdown(),
        ".csv" => ReadingsFile.WriteTable(record),
        _ => ReadingsFile.Write(record),
    };

    private static ExitStatus StatusOf(CommissioningRecord record, bool hasReadings) =>
        record.Count(ReadingVerdict.Outside) + record.Count(ReadingVerdict.Impossible) > 0 ? ExitStatus.Failures
        : hasReadings && !record.IsAccepted ? ExitStatus.Cautions
        : ExitStatus.Fine;

    private static Page PageOf(CommissioningRecord record, DiagnosisReport? diagnosis, Arguments arguments)
    {
        var page = new Page(Terminal.Width);
        page.Line(record.Sheet.Site.Name);
        WriteDangers(page, record.Sheet.Dangers);
        if (arguments.SheetPath is not null && arguments.ReadingsPath is null)
        {
            page.Text(FormattableString.Invariant($"{record.Sheet.Lines.Count} readings, in the order in which it is safe and quick to take them:")
                + $" {arguments.SheetPath}");
        }

        if (arguments.ReadingsPath is not null) WriteAcceptance(page, record);
        if (diagnosis is null) return page;
        page.Blank();
        foreach (string line in diagnosis.ToText().TrimEnd('\n').Split('\n')) page.Text(line.TrimStart(), indent: line.Length - line.TrimStart().Length);
        return page;
    }

    private static void WriteAcceptance(Page page, CommissioningRecord record)
    {
        page.Text(record.ToString());
        foreach (ReadingVerdict verdict in (ReadingVerdict[])[ReadingVerdict.Impossible, ReadingVerdict.Outside, ReadingVerdict.NotRead])
        {
            WriteLines(page, verdict, [.. record.Lines.Where(l => l.Verdict == verdict)]);
        }

        if (record.IsAccepted) page.Text("Every reading was taken and is inside its band.");
    }

    // The plan comes first: nothing is energized on a site whose plan is dangerous.
    private static void WriteDangers(Page page, IReadOnlyList<Finding> dangers)
    {
        if (dangers.Count == 0) return;
        page.Line(FormattableString.Invariant($"Do not energize: {dangers.Count} {(dangers.Count == 1 ? "danger" : "dangers")} in the plan."), ConsoleColor.Red);
        foreach (Finding danger in dangers) page.Text($"- {danger.About.Name}: {danger.Message} Fix: {danger.Remedy}", indent: 2);
        page.Text("Stop before a box is switched on: take only the readings on dead wires.");
        page.Blank();
    }

    private static void WriteLines(Page page, ReadingVerdict verdict, IReadOnlyList<JudgedReading> lines)
    {
        if (lines.Count == 0) return;
        page.Blank();
        page.Line(verdict switch
        {
            ReadingVerdict.Impossible => "Impossible: look at the meter, its range and its leads",
            ReadingVerdict.Outside => "Outside: something differs from the site file",
            _ => "Not read",
        });
        foreach (JudgedReading line in lines) page.Text(Said(line), indent: 2);
    }

    private static string Said(JudgedReading line)
    {
        ExpectedReading expected = line.Expected;
        string band = expected.Highest is IQuantity highest ? $"{Shown(expected.Lowest)} to {Shown(highest)}" : $"at least {Shown(expected.Lowest)}";
        string read = line.Reading is null ? string.Empty : $" {(line.Reading.Value is IQuantity value ? Shown(value) : "over range")};";
        return $"{expected.Point}:{read} band {band}";
    }

    private static string Shown(IQuantity quantity) => quantity switch
    {
        ElectricPotential volts => FormattableString.Invariant($"{volts.Volts:0.00} V"),
        ElectricCurrent amperes => FormattableString.Invariant($"{amperes.Amperes:0.00} A"),
        ElectricResistance { Ohms: > 1e5 } open => FormattableString.Invariant($"{open.Megaohms:0.0} M\u03A9"),
        ElectricResistance ohms => FormattableString.Invariant($"{ohms.Ohms:0.00} \u03A9"),
        _ => quantity.ToString() ?? string.Empty,
    };
}
