#!/usr/bin/env dotnet
#:package CamPower.Files@0.1.0
// Checks a site file, one line a finding, worst first. Usage: dotnet run check-yard.cs -- site.json
// The exit status is 0 for notes at most, 1 for cautions, 2 for failures or danger, 3 for a file that cannot be read.
using CamPower;
using CamPower.Files;

if (args is not [string path] || !File.Exists(path))
{
    Console.Error.WriteLine(args.Length == 1 ? $"File not found: {args[0]}" : "Usage: dotnet run check-yard.cs -- site.json");
    return 3;
}

SiteFileResult file;
try
{
    using FileStream stream = File.OpenRead(path);
    file = SiteFile.Read(stream);
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine(e.Message);
    return 3;
}

if (!file.TryGetSite(out Site? site))
{
    Console.Error.WriteLine(file);
    return 3;
}

SiteAssessment assessment = site.Assess();
IReadOnlyList<Finding> findings = RuleSet.Standard.Check(assessment);
foreach (DeviceAssessment device in assessment.Devices) Console.WriteLine(device);
foreach (Finding finding in findings) Console.WriteLine(finding);
return findings.Count == 0 ? 0 : findings[0].Severity switch { Severity.Note => 0, Severity.Caution => 1, _ => 2 };
