using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;

namespace SiteCheck.Tests;

/// <summary>One row of a table of findings written by hand.</summary>
public sealed record ExpectedFinding(string Severity, string Rule, string About, string Condition, double? Measured, double? Limit, string Unit)
{
    /// <summary>The table beside a site file.</summary>
    public static IReadOnlyList<ExpectedFinding> TableOf(string site) =>
    [
        .. File.ReadLines(RepositoryFiles.PathOf($"samples/SiteCheck/sites/{site}.findings.csv"))
            .Where(line => !line.StartsWith('#'))
            .Skip(1)
            .Select(line => line.Split(','))
            .Select(c => new ExpectedFinding(c[0], c[1], c[2], c[3], Number(c[4]), Number(c[5]), c[6])),
    ];

    private static double? Number(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);
}
