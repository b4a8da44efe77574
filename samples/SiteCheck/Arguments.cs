using System;

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

    public string? HtmlPath { get; private init; }

    public string? MarkdownPath { get; private init; }

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
                "--html" or "--markdown" when i + 1 == args.Length => Wrong($"{args[i]} takes the name of a file"),
                "--html" => read with { HtmlPath = args[++i], Error = Repeated(read.HtmlPath, "--html") },
                "--markdown" => read with { MarkdownPath = args[++i], Error = Repeated(read.MarkdownPath, "--markdown") },
                string option when option.StartsWith('-') => Wrong($"Unknown option {option}"),
                string path => read with { SitePath = path, Error = Repeated(read.SitePath, "The site file") },
            };
        }

        return read;

        Arguments Wrong(string error) => read with { Error = error };
    }

    private Arguments Printing(Printed what) =>
        this with { Printed = what, Error = Printed == Printed.Text || Printed == what ? null : "--json and --csv both print: ask for one of them" };

    private static string? Repeated(string? before, string what) => before is null ? null : $"{what} is given twice";
}
