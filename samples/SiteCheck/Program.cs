using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower;
using CamPower.Files;
using CamPower.Reports;
using SiteCheck;
using Spectre.Console;

// Without a site file it assesses the boatyard that comes with it.
bool isUnderstood = Arguments.TryRead(args, out Arguments arguments);
string path = arguments.SitePath ?? Path.Combine(AppContext.BaseDirectory, "sites", "boatyard.json");
IAnsiConsole console = Consoles.ForTerminalOrFile();
return (int)Run();

ExitStatus Run()
{
    if (!isUnderstood || !File.Exists(path))
    {
        console.WriteLine(isUnderstood ? $"{path} is no file. {Arguments.Usage}" : Arguments.Usage);
        return ExitStatus.Unreadable;
    }

    using FileStream file = File.OpenRead(path);
    SiteFileResult read = SiteFile.Read(file);
    if (!read.TryGetSite(out Site? site))
    {
        console.MarkupLineInterpolated($"[bold]{Path.GetFileName(path)}[/] cannot be read:");
        foreach (SiteFileFault fault in read.Faults) console.WriteLine($"  {fault}");
        return ExitStatus.Unreadable;
    }

    var evidence = new Evidence(site.Assess());
    IReadOnlyList<Finding> findings = RuleSet.Standard.Check(evidence);
    new ConsoleReport(console).Print(evidence, findings);
    if (arguments.HtmlPath is string html) File.WriteAllText(html, new SiteReport(evidence, findings).ToHtml());
    if (arguments.MarkdownPath is string markdown) File.WriteAllText(markdown, new SiteReport(evidence, findings).ToMarkdown());
    return findings.Select(f => f.Severity).DefaultIfEmpty(Severity.Note).Max() switch
    {
        Severity.Note => ExitStatus.Fine,
        Severity.Caution => ExitStatus.Cautions,
        _ => ExitStatus.Failures,
    };
}
