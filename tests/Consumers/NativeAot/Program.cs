using System;
using System.IO;
using CamPower;
using CamPower.Files;
using Consumers.NetStandard;

// Usage: NativeAot [site file]. Prints the gate plan, or what becomes of every device of a site file.
Console.OutputEncoding = System.Text.Encoding.UTF8;
if (args.Length == 0)
{
    foreach (string line in GatePlan.Lines()) Console.WriteLine(line);
    return 0;
}

SiteFileResult read = SiteFile.Read(File.ReadAllText(args[0]));
if (!read.TryGetSite(out Site? site))
{
    foreach (SiteFileError fault in read.Errors) Console.WriteLine(fault);
    return 1;
}

SiteAssessment assessment = site.Assess();
foreach (DeviceAssessment device in assessment.Devices) Console.WriteLine(device);
foreach (Finding finding in RuleSet.Standard.Check(assessment)) Console.WriteLine(finding);
return 0;
