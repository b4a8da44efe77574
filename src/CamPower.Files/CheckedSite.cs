using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files;

/// <summary>One site of many, checked: its findings, or the error that kept it from being checked.</summary>
/// <remarks>Immutable.</remarks>
public sealed class CheckedSite
{
    private readonly int[] _counts = new int[4];

    internal CheckedSite(string name, string? siteName, IReadOnlyList<Finding> findings, IReadOnlyList<string> errors)
    {
        Name = name;
        SiteName = siteName;
        Findings = findings;
        Errors = errors;
        foreach (Finding finding in findings) _counts[(int)finding.Severity]++;
    }

    /// <summary>Name of the document: its file, or its line.</summary>
    public string Name { get; }

    /// <summary>Name of the site, or null where the document cannot be read.</summary>
    public string? SiteName { get; }

    /// <summary>What the rules found, as <see cref="RuleSet"/> orders it; empty where the site was not checked.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Why the site was not checked: every error of the file, or what failed; empty where it was checked.</summary>
    public IReadOnlyList<string> Errors { get; }

    /// <summary>Whether the site was read and checked. If not, nothing is known of it, least of all that it is safe.</summary>
    public bool IsChecked => Errors.Count == 0;

    /// <summary>How many findings have a severity.</summary>
    /// <param name="severity">The severity.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="severity"/> is none of the four.</exception>
    public int CountOf(Severity severity) => Enum.IsDefined(severity)
        ? _counts[(int)severity]
        : throw new ArgumentOutOfRangeException(nameof(severity), severity, "severity must be one of the four.");

    /// <summary>Name and what was found, in one line; never throws.</summary>
    public override string ToString() => IsChecked
        ? FormattableString.Invariant($"{Name}: {SiteName}: {Findings.Count} findings")
        : $"{Name}: not checked: {Errors[0]}";

    /// <summary>Worse first: more dangers, then failures, then cautions; notes say nothing bad. Alike sites compare as 0.</summary>
    internal static int WorseFirst(CheckedSite left, CheckedSite right) => Severities()
        .Select(severity => right.CountOf(severity).CompareTo(left.CountOf(severity)))
        .FirstOrDefault(order => order != 0);

    private static IEnumerable<Severity> Severities() => [Severity.Danger, Severity.Failure, Severity.Caution];
}
