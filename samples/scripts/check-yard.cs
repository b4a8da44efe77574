#!/usr/bin/env dotnet
#:package CamPower.Files@0.1.0
// Checks a site file, one line a finding, worst first. Usage: dotnet run check-yard.cs -- site.json
// The exit status is 0 for notes at most, 1 for cautions, 2 for failures or danger, 3 for a file that cannot be read.
using CamPower;
using CamPower.Files;

if (args.Length != 1 || !File.Exists(args[0]))
{
    Console.Error.WriteLine("Usage: dotnet run check-yard.cs -- site.json");
    return 3;
}

SiteFileResult file = SiteFile.Read(File.ReadAllText(args[0]));
if (!file.TryGetSite(out Site? site))
{
    foreach (SiteFileError fault in file.Faults) Console.Error.WriteLine(fault);
    return 3;
}

SiteAssessment assessment = site.Assess();
IReadOnlyList<Finding> findings = RuleSet.Standard.Check(assessment);
foreach (DeviceAssessment device in assessment.Devices) Console.WriteLine(device);
foreach (Finding finding in findings) Console.WriteLine(finding);
return findings.Count == 0 ? 0 : findings[0].Severity switch { Severity.Note => 0, Severity.Caution => 1, _ => 2 };
