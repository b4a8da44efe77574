#!/usr/bin/env dotnet
#:package CamPower.Files@0.1.0
// The rules of the house: one stricter, one dropped, one of our own. Usage: dotnet run own-rules.cs -- site.json
using CamPower;
using CamPower.Files;
using UnitsNet;

if (args is not [string path] || !File.Exists(path))
{
    Console.Error.WriteLine(args.Length == 1 ? $"File not found: {args[0]}" : "Usage: dotnet run own-rules.cs -- site.json");
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

RuleSet house = RuleSet.Standard
    .With(Rules.SupplyAboveHeadroomPolicy(Ratio.FromPercent(60)))
    .Without("copper-clad-aluminum")
    .With(new LongRunRule(Length.FromMeters(60)));
foreach (Finding finding in house.Check(site.Assess())) Console.WriteLine(finding);
return 0;

/// <summary>Runs longer than the drum that we carry need a joint.</summary>
internal sealed class LongRunRule(Length drum) : Rule("longer-than-a-drum", Severity.Note,
    "A run is longer than the drum of cable that we carry.", "Order a longer drum, or plan the place of the joint.", Sources.CommonPractice)
{
    public override IQuantity Limit => drum;

    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from run in evidence.Assessment.Site.Runs
        where run.Run.OneWayLength > drum
        select Find(Subject.Of(run), $"It is {run.Run.OneWayLength.ToUnit(drum.Unit).ToString("s3", System.Globalization.CultureInfo.InvariantCulture)} long.", run.Run.OneWayLength, drum);
}
