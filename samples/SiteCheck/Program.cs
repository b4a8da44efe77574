using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using CamPower;
using CamPower.Files;
using CamPower.Reports;
using SiteCheck;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
Arguments arguments = Arguments.Read(args);

// Without a site file it checks the boatyard that comes with it.
string path = arguments.SitePath ?? Path.Combine(AppContext.BaseDirectory, "sites", "boatyard.json");
try
{
    return (int)Run();
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException)
{
    return (int)Refused(e.Message);
}

ExitStatus Run()
{
    if (arguments.Error is string wrong) return Refused($"{wrong}. SiteCheck --help shows how it is used.");
    if (arguments.IsHelp)
    {
        Console.WriteLine(Help.Text);
        return ExitStatus.Fine;
    }

    if (!File.Exists(path)) return Refused($"File not found: {path}");
    foreach (string? needed in (string?[])[arguments.SchedulePath, arguments.ReadingsPath, arguments.ComparePath])
    {
        if (needed is not null && !File.Exists(needed)) return Refused($"File not found: {needed}");
    }

    SiteFileResult read = Read();
    string names = arguments.SchedulePath is string csv ? $"{path} with {csv}" : path;
    if (!read.TryGetSite(out Site? site)) return Unread(names, read);
    if (arguments.ComparePath is not string before) return Check(site);
    SiteFileResult old = SiteFile.Read(File.ReadAllText(before));
    return old.TryGetSite(out Site? was) ? Compare(site, was) : Unread(before, old);
}

ExitStatus Unread(string names, SiteFileResult read) =>
    Refused([$"{names} cannot be read:", .. read.Errors.Select(fault => $"  {fault}")]);

// Worse than before is what was gained.
ExitStatus Compare(Site site, Site before)
{
    SiteComparison comparison = site.ComparedWith(before, RuleSet.Standard, PriceList.Neutral);
    var report = new ChangeReport(comparison);
    if (arguments.Printed == Printed.Json)
    {
        using (Stream output = Console.OpenStandardOutput()) report.WriteJson(output);
        Console.WriteLine();
    }
    else
    {
        Terminal.Write(ChangeList.Page(comparison, Terminal.Width));
    }

    if (arguments.HtmlPath is string html) File.WriteAllText(html, report.ToHtml());
    if (arguments.MarkdownPath is string markdown) File.WriteAllText(markdown, report.ToMarkdown());
    return StatusOf(comparison.Gained);
}

SiteFileResult Read()
{
    using FileStream file = File.OpenRead(path);
    if (arguments.SchedulePath is null) return SiteFile.Read(file);
    using FileStream schedule = File.OpenRead(arguments.SchedulePath);
    return SiteSchedule.Read(file, schedule);
}

ExitStatus Check(Site site)
{
    if (arguments.SheetPath is not null || arguments.ReadingsPath is not null || arguments.Symptoms.Count > 0) return CommissioningRun.Run(site, arguments);
    var evidence = new Evidence(site.Assess());
    IReadOnlyList<Finding> findings = RuleSet.Standard.Check(evidence);
    var report = new SiteReport(evidence, findings)
    {
        Material = arguments.MaterialsPath is null ? null : site.ListMaterial(),
        Author = arguments.Author,
        Date = arguments.Date,
        Revision = arguments.Revision,
        HasEveryProfile = arguments.HasProfiles,
        Remedies = arguments.HasRemedies ? site.FindRemedies(RuleSet.Standard, PriceList.Neutral) : [],
        Repair = arguments.HasRemedies ? site.CheapestRepair(RuleSet.Standard, PriceList.Neutral) : null,
    };
    Print(report, evidence);
    if (arguments.HtmlPath is string html) File.WriteAllText(html, report.ToHtml());
    if (arguments.MarkdownPath is string markdown) File.WriteAllText(markdown, report.ToMarkdown());
    if (arguments.SplitPath is string split) Split(site, split);
    if (arguments.MaterialsPath is string materials) WriteMaterials(report, materials);
    return StatusOf(findings);
}

ExitStatus StatusOf(IReadOnlyList<Finding> findings) => findings.Select(f => f.Severity).DefaultIfEmpty(Severity.Note).Max() switch
{
    Severity.Note => ExitStatus.Fine,
    Severity.Caution => ExitStatus.Cautions,
    _ => ExitStatus.Failures,
};

void WriteMaterials(SiteReport report, string path)
{
    File.WriteAllText(path, SiteMaterial.WriteBill(report.Material!));
    File.WriteAllText(Path.ChangeExtension(path, ".pulls.csv"), SiteMaterial.WritePulls(report.Material!));
    File.WriteAllText(Path.ChangeExtension(path, ".outputs.csv"), SiteMaterial.WriteOutputs(report.Assessment));
}

void Split(Site site, string name)
{
    (string json, string csv) = SiteSchedule.Write(site);
    File.WriteAllText(name + ".json", json);
    File.WriteAllText(name + ".csv", csv);
}

void Print(SiteReport report, Evidence evidence)
{
    switch (arguments.Printed)
    {
        case Printed.Json:
            using (Stream output = Console.OpenStandardOutput()) report.WriteJson(output);
            Console.WriteLine();
            break;
        case Printed.Csv:
            Console.Write(Schedule.Of(report));
            break;
        default:
            Terminal.Write(new ConsoleReport(report, evidence, Terminal.Width).Page(arguments.HasDetails));
            break;
    }
}

ExitStatus Refused(params IEnumerable<string> lines)
{
    foreach (string line in lines) Console.Error.WriteLine(line);
    return ExitStatus.Unusable;
}
