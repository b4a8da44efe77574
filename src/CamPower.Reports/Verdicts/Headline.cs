using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Sections;
using static System.FormattableString;

namespace CamPower.Reports.Verdicts;

/// <summary>The first things to know about a site. It never says that a site may be energized: that needs an
/// inspection.</summary>
internal static class Headline
{
    internal static string Of(IReadOnlyList<Finding> findings, int notStated)
    {
        if (findings.Any(f => f.Severity == Severity.Danger)) return "Do not energize.";
        string shown = notStated == 0
            ? "No danger found in what was checked."
            : $"Not shown to be safe: {Said.Count(notStated, "item", "items")} not stated.";
        return findings.Any(f => f.Severity == Severity.Failure) ? $"Correct it before use. {shown}" : shown;
    }

    /// <summary>Number of findings of each severity, worst first; a severity without any is left out.</summary>
    internal static string Counts(IReadOnlyList<Finding> findings) => findings.Count == 0
        ? "no findings"
        : string.Join(", ", findings.GroupBy(f => f.Severity).OrderByDescending(g => g.Key).Select(g => Said.Severity(g.Key, g.Count())));

    /// <summary>How many devices are up, start and get a voltage that they accept, in every condition, and of how many that is not
    /// known.</summary>
    internal static string Devices(SiteAssessment assessment)
    {
        IReadOnlyList<DeviceAssessment> counted = Counted(assessment);
        int all = counted.Count, working = Count(Verdict.Holds), unknown = Count(Verdict.Unknown);
        int silent = counted.Count(d => d.Verdict == Verdict.Holds && d.Worst.Start == StartVerdict.Unknown);
        string work = Invariant($"{working} of {Said.Count(all, "device works", "devices work")} in every condition");
        if (silent > 0) work += silent == working ? " (start not checked)" : Invariant($" (start not checked for {silent} of them)");
        return unknown > 0 ? work + Invariant($". Not known: {unknown} more") : work;

        int Count(Verdict verdict) => counted.Count(d => d.Verdict == verdict);
    }

    /// <summary>The devices that somebody placed: the input of a converter is a part of its box, and none of them.</summary>
    internal static IReadOnlyList<DeviceAssessment> Counted(SiteAssessment assessment) =>
        [.. assessment.Devices.Where(d => d.Device.Model.Kind != DeviceKind.Converter)];
}
