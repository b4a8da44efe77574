using System;
using CamPower;
using CamPower.Files;

namespace FleetCheck;

/// <summary>A site as a row of CSV.</summary>
internal static class SiteRow
{
    internal const string Header = "document,site,dangers,failures,cautions,notes,error";

    internal static string Of(CheckedSite site) => string.Join(',', (string[])
    [
        Quoted(site.Name), Quoted(site.SiteName ?? ""), Count(site, Severity.Danger), Count(site, Severity.Failure),
        Count(site, Severity.Caution), Count(site, Severity.Note), Quoted(site.IsChecked ? "" : site.Errors[0]),
    ]);

    // Of a site that was not checked nothing is known: no number, not a zero.
    private static string Count(CheckedSite site, Severity severity) =>
        site.IsChecked ? FormattableString.Invariant($"{site.CountOf(severity)}") : "";

    private static string Quoted(string text) => text.AsSpan().IndexOfAny(",\"\r\n") < 0
        ? text
        : "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
}
