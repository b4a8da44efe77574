using System.Collections.Generic;

namespace CamPower.Tests.Verdicts;

/// <summary>One installation and what an engineer says of it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Why">Why the verdict is that: a clause, a worked number, or common practice.</param>
/// <param name="Installation">The whole of it.</param>
internal sealed record VerdictCase(string Name, string Why, Installation Installation)
{
    /// <summary>Every finding above a Note, and no other.</summary>
    internal IReadOnlyList<Expected> Findings { get; init; } = [];

    internal bool IsSound => Findings.Count == 0;

    internal VerdictCase Gives(Severity severity, string rule, string about, double? measured = null, double? limit = null) =>
        this with { Findings = [.. Findings, new Expected(rule, severity, about, measured, limit)] };

    internal VerdictCase Danger(string rule, string about, double? measured = null, double? limit = null) =>
        Gives(Severity.Danger, rule, about, measured, limit);

    internal VerdictCase Failure(string rule, string about, double? measured = null, double? limit = null) =>
        Gives(Severity.Failure, rule, about, measured, limit);

    internal VerdictCase Caution(string rule, string about, double? measured = null, double? limit = null) =>
        Gives(Severity.Caution, rule, about, measured, limit);
}
