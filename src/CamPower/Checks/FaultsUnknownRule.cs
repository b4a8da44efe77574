using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>All that is not known of the faults and the starts of a site, in one finding: what to state, for what, and which verdict it would allow.</summary>
/// <remarks>A Note: something is not known. The insulation and the installation method are asked for only where a verdict hangs on them.</remarks>
public sealed class FaultsUnknownRule() : Rule("faults-unknown", Severity.Note,
    "Something is not stated that a verdict on shorts, on heat in conductors or on starting needs: no rule can speak of it.",
    "Take what is not stated from the data sheets; where a sheet says nothing, ask its maker.", Sources.OvercurrentProtection)
{
    private static readonly (FaultData Data, string Allows)[] ForVerdicts =
    [
        (FaultData.Protection, "whether a short is interrupted"),
        (FaultData.Overload, "how much a short draws"),
        (FaultData.SourceResistance, "how much a short draws"),
        (FaultData.DeviceTemperature, "whether a short is interrupted"),
        (FaultData.Insulation, "whether the conductors withstand a short"),
        (FaultData.InstallationMethod, "how hot a lasting short makes the conductors"),
    ];

    /// <inheritdoc/>
    public override bool IsAboutWhatIsNotStated => true;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        List<string> unknown = [.. OfOutputs(Require.NotNull(evidence, nameof(evidence)).Faults), .. OfStarts(evidence)];
        if (unknown.Count > 0) yield return Find(new Subject(SubjectKind.Site, evidence.Assessment.Site.Name), "Not stated: " + string.Join("; ", unknown) + ".");
    }

    private static IEnumerable<string> OfOutputs(IReadOnlyList<OutputFaults> outputs) =>
        from item in ForVerdicts
        let lacking = outputs.Where(output => MissingOf(output).HasFlag(item.Data)).ToList()
        where lacking.Count > 0
        select $"{FaultDataText.Words(item.Data)} ({Places(lacking)}), for {item.Allows}";

    // Without a verdict on the device no conductor is asked for: that comes next.
    private static FaultData MissingOf(OutputFaults output) => output.MissingForVerdict != FaultData.None ? output.MissingForVerdict : output.Missing;

    private static IEnumerable<string> OfStarts(Evidence evidence)
    {
        List<SiteDevice> silent = [.. evidence.Assessment.Site.Devices.Where(d => d.Model.Starting is null)];
        if (silent.Count > 0) yield return $"turn-on and drop-out voltage ({string.Join(", ", silent.Select(d => d.Name))}), for whether they start";

        foreach (string text in OfDevices(evidence, condition => condition.Start, "whether a start opens it")) yield return text;
        foreach (string text in OfDevices(evidence, condition => condition.Load, "whether it carries the current")) yield return text;
    }

    // A device that is not stated is asked for already.
    private static IEnumerable<string> OfDevices(Evidence evidence, Func<ProtectionInCondition, Judgment?> fact, string allows) => evidence.Faults
        .Where(output => output.Output.Protection is not null)
        .Select(output => (Output: output, Missing: output.InConditions.Select(fact).FirstOrDefault(judgment => judgment?.Verdict == Verdict.Unknown)?.NotStated))
        .Where(x => x.Missing is not null)
        .GroupBy(x => x.Missing!, x => x.Output, StringComparer.Ordinal)
        .Select(alike => $"{alike.Key} ({Places([.. alike])}), for {allows}");

    // By box, outputs in a row as a range.
    private static string Places(IReadOnlyList<OutputFaults> outputs) => string.Join(", ", outputs.GroupBy(o => o.Box).Select(box =>
    {
        int[] numbers = [.. box.Select(o => o.Output.Number).OrderBy(n => n)];
        IEnumerable<string> rows = numbers.Select((number, place) => (number, row: number - place)).GroupBy(x => x.row, x => x.number)
            .Select(row => row.First() == row.Last() ? Invariant($"{row.First()}") : Invariant($"{row.First()}-{row.Last()}"));
        return $"{box.Key.Name} {(numbers.Length > 1 ? "outputs" : "output")} {string.Join(", ", rows)}";
    }));
}
