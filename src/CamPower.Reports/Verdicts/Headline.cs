using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Sections;
using static System.FormattableString;

namespace CamPower.Reports.Verdicts;

/// <summary>What whoever looks at a site wants to know first. It never says that a site may be energized: the local code and who works on it say that.</summary>
internal static class Headline
{
    internal static string Of(IReadOnlyList<Finding> findings, int notStated)
    {
        if (findings.Any(f => f.Severity == Severity.Danger)) return "Do not energize";
        return notStated == 0 ? "No danger found in what was checked" : $"Not shown to be safe: {Said.Count(notStated, "item", "items")} not stated";
    }

    /// <summary>How many findings of each severity, worst first; one without any is not counted.</summary>
    internal static string Counts(IReadOnlyList<Finding> findings) => findings.Count == 0
        ? "no findings"
        : string.Join(", ", findings.GroupBy(f => f.Severity).OrderByDescending(g => g.Key).Select(g => Said.Severity(g.Key, g.Count())));

    /// <summary>How many devices are up, start and get a voltage that they accept, in every condition.</summary>
    internal static string Devices(SiteAssessment assessment)
    {
        int all = assessment.Devices.Count, working = assessment.Devices.Count(DeviceRow.IsWell);
        int unknown = assessment.Devices.Count(d => DeviceRow.IsWell(d) && d.Worst.Start == StartVerdict.Unknown);
        string work = working == all && all > 0 ? Invariant($"All {Said.Count(all, "device works", "devices work")}") : Invariant($"{working} of {Said.Count(all, "device works", "devices work")}");
        return $"{work} in every condition{(unknown == 0 ? "" : Invariant($"; whether {unknown} of them start is not known"))}";
    }
}
