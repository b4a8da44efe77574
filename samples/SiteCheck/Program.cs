using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower;
using CamPower.Files;
using SiteCheck;
using Spectre.Console;

// Usage: SiteCheck [site file]. Without one it assesses the boatyard that comes with it.
string path = args.Length > 0 ? args[0] : Path.Combine(AppContext.BaseDirectory, "sites", "boatyard.json");
IAnsiConsole console = Consoles.ForTerminalOrFile();
return (int)Run();

ExitStatus Run()
{
    if (args.Length > 1 || !File.Exists(path))
    {
        console.MarkupLineInterpolated($"[bold]{path}[/] is no file. Usage: SiteCheck [[site file]]");
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

    SiteAssessment assessment = site.Assess();
    IReadOnlyList<Finding> findings = RuleSet.Standard.Check(assessment);
    new SiteReport(console).Print(assessment, findings);
    return findings.Select(f => f.Severity).DefaultIfEmpty(Severity.Note).Max() switch
    {
        Severity.Note => ExitStatus.Fine,
        Severity.Caution => ExitStatus.Cautions,
        _ => ExitStatus.Failures,
    };
}
