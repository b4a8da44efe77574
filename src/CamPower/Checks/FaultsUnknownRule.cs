using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.FaultsUnknown"/>.</summary>
internal sealed class FaultsUnknownRule() : Rule("faults-unknown", Severity.Note,
    "Data is not stated that a verdict on shorts, on heat in conductors or on starting needs. No rule can judge without it.",
    "Take the data from the data sheets. Where a data sheet does not state it, ask the maker.", Sources.OvercurrentProtection)
{
    private static readonly (FaultData Data, string Decides)[] ForVerdicts =
    [
        (FaultData.Protection, "whether a short is interrupted"),
        (FaultData.Overload, "the current of a short"),
        (FaultData.SourceResistance, "the current of a short"),
        (FaultData.DeviceTemperature, "whether a short is interrupted"),
        (FaultData.Insulation, "whether the conductors withstand a short"),
        (FaultData.InstallationMethod, "how hot a lasting short makes the conductors"),
    ];

    public override bool IsAboutWhatIsNotStated => true;

    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        List<Unknown> unknown = [.. OfOutputs(Require.NotNull(evidence, nameof(evidence)).Faults), .. OfStarts(evidence)];
        if (unknown.Count == 0) yield break;
        IEnumerable<string> sentences = unknown.GroupBy(item => item.Decides, StringComparer.Ordinal)
            .Select(alike => $"Not stated: {string.Join("; ", WithPlaces(alike))}, to judge {alike.Key}.");
        yield return Find(new Subject(SubjectKind.Site, evidence.Assessment.Site.Name), string.Join(" ", sentences));
    }

    private static IEnumerable<Unknown> OfOutputs(IReadOnlyList<OutputFaults> outputs) =>
        from item in ForVerdicts
        let lacking = outputs.Where(output => MissingOf(output).HasFlag(item.Data)).ToList()
        where lacking.Count > 0
        select new Unknown(FaultDataText.Words(item.Data), Places(lacking), item.Decides);

    // A conductor is asked for only once the verdict on the protective device is known.
    private static FaultData MissingOf(OutputFaults output) =>
        output.MissingForVerdict != FaultData.None ? output.MissingForVerdict : output.Missing;

    private static IEnumerable<Unknown> OfStarts(Evidence evidence)
    {
        List<SiteDevice> silent = [.. evidence.Assessment.Site.Devices.Where(d => d.Model.Starting is null)];
        IEnumerable<Unknown> starting = silent.Count == 0 ? []
            : [new Unknown("turn-on and drop-out voltage", string.Join(", ", silent.Select(d => d.Name)), "whether they start")];
        return starting.Concat(OfProtection(evidence, condition => condition.Start, "whether a start opens the protective device"))
            .Concat(OfProtection(evidence, condition => condition.Load, "whether the protective device carries the current"));
    }

    // A protective device that is not stated is asked for already.
    private static IEnumerable<Unknown> OfProtection(Evidence evidence, Func<ProtectionInCondition, Judgment?> fact, string decides) =>
        from output in evidence.Faults
        where output.Output.Protection is not null
        let missing = output.InConditions.Select(fact).FirstOrDefault(judgment => judgment?.Verdict == Verdict.Unknown)?.NotStated
        where missing is not null
        group output by missing into alike
        select new Unknown(alike.Key, Places([.. alike]), decides);

    // What is missing at the same places is named together.
    private static IEnumerable<string> WithPlaces(IEnumerable<Unknown> unknown) =>
        unknown.GroupBy(item => item.Places, StringComparer.Ordinal)
        .Select(alike => $"{string.Join(", ", alike.Select(item => item.Data))} ({alike.Key})");

    // By box, outputs in a row as a range.
    private static string Places(IReadOnlyList<OutputFaults> outputs) => string.Join(", ", outputs.GroupBy(o => o.Box).Select(box =>
    {
        int[] numbers = [.. box.Select(o => o.Output.Number).OrderBy(n => n)];
        IEnumerable<string> rows = numbers.Select((number, place) => (number, row: number - place)).GroupBy(x => x.row, x => x.number)
            .Select(row => row.First() == row.Last() ? Invariant($"{row.First()}") : Invariant($"{row.First()}-{row.Last()}"));
        return $"{box.Key.Name} {(numbers.Length > 1 ? "outputs" : "output")} {string.Join(", ", rows)}";
    }));

    private sealed class Unknown(string data, string places, string decides)
    {
        internal string Data { get; } = data;

        internal string Places { get; } = places;

        /// <summary>What it decides, after "to judge".</summary>
        internal string Decides { get; } = decides;
    }
}
