using System;
using System.Collections.Generic;
using System.IO;
using System.Text;
using System.Threading;
using CamPower;
using CamPower.Files;
using FleetCheck;

const int Stopped = 130, Unusable = 3, SitesAProgress = 100;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
Arguments arguments = Arguments.Read(args);
if (arguments.IsHelp) Console.WriteLine(Arguments.Help);
if (arguments.Error is string wrong) Console.Error.WriteLine($"{wrong}. FleetCheck --help shows how it is used.");
if (arguments.IsHelp || arguments.Error is not null) return arguments.IsHelp ? 0 : Unusable;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, e) =>
{
    e.Cancel = true;
    stop.Cancel();
};
var summary = new FleetSummary();
try
{
    Check();
    SummaryPage.Write(summary, Console.Out);
    return SummaryPage.ExitStatus(summary);
}
catch (OperationCanceledException)
{
    Console.Error.WriteLine("Stopped; what follows is of the sites so far.");
    SummaryPage.Write(summary, Console.Out);
    return Stopped;
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine(e.Message);
    return Unusable;
}

void Check()
{
    string path = arguments.Path ?? Path.Combine(AppContext.BaseDirectory, "fleet.jsonl");
    using TextWriter? rows = arguments.SitesPath is string csv ? new StreamWriter(csv) { NewLine = "\n" } : null;
    rows?.WriteLine(SiteRow.Header);
    using Stream? lines = path == "-" ? Console.OpenStandardInput() : Directory.Exists(path) ? null : File.OpenRead(path);
    IEnumerable<SiteDocument> documents = lines is null ? Fleet.ReadFolder(path) : Fleet.ReadLines(lines);
    foreach (CheckedSite site in Fleet.Check(documents, RuleSet.Standard, cancellationToken: stop.Token))
    {
        summary.Add(site);
        rows?.WriteLine(SiteRow.Of(site));
        if (!site.IsChecked) Console.Error.WriteLine(site);
        if (!Console.IsErrorRedirected && summary.Sites % SitesAProgress == 0) Console.Error.Write($"\r{summary.Sites} sites");
    }

    if (!Console.IsErrorRedirected && summary.Sites >= SitesAProgress) Console.Error.WriteLine();
}
