using System;
using System.Collections.Generic;
using System.Globalization;
using CamPower.Commissioning;
using CamPower.Files;
using UnitsNet;

namespace SiteCheck;

/// <summary>What the command line asks for.</summary>
internal sealed record Arguments
{
    private Arguments()
    {
    }

    public string? SitePath { get; private init; }

    /// <summary>What is printed: the report as text, or for programs the verdicts or the schedule.</summary>
    public Printed Printed { get; private init; }

    public bool HasDetails { get; private init; }

    public bool IsHelp { get; private init; }

    /// <summary>Whether remedies are sought and shown.</summary>
    public bool HasRemedies { get; private init; }

    /// <summary>A schedule that belongs to the site file.</summary>
    public string? SchedulePath { get; private init; }

    /// <summary>Where the site is written to as a small site file and a schedule: both names without their endings.</summary>
    public string? SplitPath { get; private init; }

    /// <summary>Another version of the site, which this one is compared with.</summary>
    public string? ComparePath { get; private init; }

    /// <summary>Where the bill of materials is written to; the pull list and the output schedule go beside it.</summary>
    public string? MaterialsPath { get; private init; }

    public string? HtmlPath { get; private init; }

    public string? MarkdownPath { get; private init; }

    /// <summary>Where the commissioning sheet is written to: .html, .md, .csv or .json.</summary>
    public string? SheetPath { get; private init; }

    /// <summary>What a meter showed on the site.</summary>
    public string? ReadingsPath { get; private init; }

    /// <summary>What was seen of the devices.</summary>
    public IReadOnlyList<Symptom> Symptoms { get; private init; } = [];

    /// <summary>How warm it is while the meter reads; null where the command line does not say.</summary>
    public Temperature? At { get; private init; }

    /// <summary>What stands at the head of a report.</summary>
    public string? Author { get; private init; }

    public string? Revision { get; private init; }

    public DateOnly? Date { get; private init; }

    /// <summary>Whether a report shows the volts along every run.</summary>
    public bool HasProfiles { get; private init; }

    /// <summary>What is wrong with the command line; null where nothing is.</summary>
    public string? Error { get; private init; }

    /// <summary>Reads a command line: each thing once at most, and a file after an option that takes one.</summary>
    public static Arguments Read(string[] args)
    {
        var read = new Arguments();
        for (int i = 0; i < args.Length && read.Error is null; i++)
        {
            read = args[i] switch
            {
                "--help" or "-h" => read with { IsHelp = true },
                "--details" => read with { HasDetails = true },
                "--json" => read.Printing(Printed.Json),
                "--csv" => read.Printing(Printed.Csv),
                "--remedies" => read with { HasRemedies = true },
                "--profiles" => read with { HasProfiles = true },
                "--html" or "--markdown" or "--schedule" or "--split" or "--sheet" or "--readings" or "--compare" or "--materials"
                    when i + 1 == args.Length => Wrong($"{args[i]} takes the name of a file"),
                "--author" or "--revision" or "--date" or "--at" or "--symptom" when i + 1 == args.Length => Wrong($"{args[i]} takes a text"),
                "--schedule" => read with { SchedulePath = args[++i], Error = Repeated(read.SchedulePath, "--schedule") },
                "--split" => read with { SplitPath = args[++i], Error = Repeated(read.SplitPath, "--split") },
                "--at" => read.WithTemperature(args[++i]),
                "--symptom" => read.WithSymptom(args[++i]),
                "--sheet" => read.WithSheet(args[++i]),
                "--readings" => read with { ReadingsPath = args[++i], Error = Repeated(read.ReadingsPath, "--readings") },
                "--compare" => read with { ComparePath = args[++i], Error = Repeated(read.ComparePath, "--compare") },
                "--materials" => read with { MaterialsPath = args[++i], Error = Repeated(read.MaterialsPath, "--materials") },
                "--author" => read with { Author = args[++i], Error = Repeated(read.Author, "--author") },
                "--revision" => read with { Revision = args[++i], Error = Repeated(read.Revision, "--revision") },
                "--date" => read.Dated(args[++i]),
                "--html" => read with { HtmlPath = args[++i], Error = Repeated(read.HtmlPath, "--html") },
                "--markdown" => read with { MarkdownPath = args[++i], Error = Repeated(read.MarkdownPath, "--markdown") },
                string option when option.StartsWith('-') => Wrong($"Unknown option {option}"),
                string path => read with { SitePath = path, Error = Repeated(read.SitePath, "The site file") },
            };
        }

        return read;

        Arguments Wrong(string error) => read with { Error = error };
    }

    private Arguments Dated(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
            ? this with { Date = date, Error = Date is null ? null : "--date is given twice" }
            : this with { Error = $"--date takes a date such as 2026-03-09, not {text}" };

    private Arguments WithTemperature(string text)
    {
        try
        {
            return this with { At = QuantityText.Read<Temperature>(text), Error = At is null ? null : "--at is given twice" };
        }
        catch (FormatException e)
        {
            return this with { Error = $"--at takes a temperature such as \"5 C\": {e.Message}" };
        }
    }

    private Arguments WithSymptom(string text)
    {
        try
        {
            return this with { Symptoms = [.. Symptoms, Symptom.Parse(text)] };
        }
        catch (FormatException e)
        {
            return this with { Error = $"--symptom: {e.Message.TrimEnd('.')}" };
        }
    }

    private Arguments WithSheet(string path) => System.IO.Path.GetExtension(path).ToLowerInvariant() is ".html" or ".md" or ".csv" or ".json"
        ? this with { SheetPath = path, Error = Repeated(SheetPath, "--sheet") }
        : this with { Error = $"--sheet takes a file that ends in .html, .md, .csv or .json, not {path}" };

    private Arguments Printing(Printed what) =>
        this with { Printed = what, Error = Printed == Printed.Text || Printed == what ? null : "--json and --csv both print: ask for one of them" };

    private static string? Repeated(string? before, string what) => before is null ? null : $"{what} is given twice";
}
