using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;
using Spectre.Console;

namespace SiteCheck;

/// <summary>What was found, worst first, and what to do about it.</summary>
internal static class FindingList
{
    public static void Write(IAnsiConsole console, IReadOnlyList<Finding> findings)
    {
        console.WriteLine();
        string count = string.Join(", ", Enum.GetValues<Severity>().Reverse().Select(s => Count(s, findings.Count(f => f.Severity == s))).Where(text => text.Length > 0));
        console.MarkupLineInterpolated($"[bold]Findings[/]: {(count.Length == 0 ? "none" : count)}");
        foreach (Finding finding in findings)
        {
            console.WriteLine();
            console.MarkupLineInterpolated($"[{Colour(finding.Severity)}]{finding.Severity.ToString().ToUpperInvariant()}[/] [bold]{finding.About.Name}[/] ({finding.Rule})");
            console.WriteIndented(finding.Message);
            console.WriteIndented("To do: " + finding.Remedy);
        }

        console.WriteLine();
    }

    private static string Count(Severity severity, int count) =>
        count == 0 ? "" : $"{count} {severity.ToString().ToLowerInvariant()}{(count == 1 || severity == Severity.Danger ? "" : "s")}";

    private static string Colour(Severity severity) => severity switch
    {
        Severity.Danger => "bold red",
        Severity.Failure => "red",
        Severity.Caution => "yellow",
        _ => "blue",
    };
}
