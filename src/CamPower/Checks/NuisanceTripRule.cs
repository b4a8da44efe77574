using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A protective device that may open though nothing is wrong: under the current of a condition, or when all behind it starts at once.</summary>
/// <remarks>At the temperature of its box. Outputs of a box that have the same device are one finding, of the one that is worst off. A start that takes more
/// of a fuse's melting I²t than the policy allows (<see cref="Sources.InrushPractice"/>) is a Caution. Of a start nothing is said where no device states its inrush,
/// or it is not known what the protective device withstands: see <see cref="FaultsUnknownRule"/>.</remarks>
public sealed class NuisanceTripRule() : Rule("nuisance-trip", Severity.Failure,
    "In some condition, or when all its devices start at once, an output takes more than its protective device is certain to carry at the temperature of the box.",
    "Use a device that carries the current there, a slower one where it is the start, cool the box, or spread the load.", Sources.DeviceCarriesItsRating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from alike in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs.Where(o => o.Output.Protection is not null).GroupBy(output => (output.Box, output.Output.Protection))
        from finding in new[] { InService(alike) ?? NearlyInService(alike), AtStart(alike, Verdict.Violated) ?? AtStart(alike, Verdict.ThinMargin) }
        where finding is not null
        select finding;

    private Finding? InService(IEnumerable<OutputFaults> alike)
    {
        List<(OutputFaults Output, ProtectionInCondition Worst)> tripping = Worst(alike, c => c.MayTrip, (_, c) => c.Current.Amperes / c.Carried!.Value.Amperes);
        if (tripping.Count == 0) return null;
        (OutputFaults output, ProtectionInCondition worst) = tripping[0];
        return Find(About(tripping),
            Invariant($"In \"{worst.Condition}\" {Which(tripping)} takes {worst.Current.Amperes:0.00} A: {output.Output.Protection} carries {worst.Carried!.Value.Amperes:0.00} A there, and {worst.Opening}.{Others(tripping)}"),
            worst.Current, worst.Carried, worst.Condition);
    }

    private Finding? NearlyInService(IEnumerable<OutputFaults> alike)
    {
        List<(OutputFaults Output, ProtectionInCondition Worst)> close = Worst(alike, c => c.Load.Verdict == Verdict.ThinMargin, (_, c) => c.Current.Amperes / c.Carried!.Value.Amperes);
        if (close.Count == 0) return null;
        (OutputFaults output, ProtectionInCondition worst) = close[0];
        return Find(About(close),
            Invariant($"In \"{worst.Condition}\" {Which(close)} takes {worst.Current.Amperes:0.00} A: {output.Output.Protection} carries {worst.Carried!.Value.Amperes:0.00} A there, but is certain to carry {((ElectricCurrent)worst.Load.PolicyLimit!).Amperes:0.00} A alone.{Others(close)}"),
            worst.Current, worst.Load.PolicyLimit, worst.Condition, Severity.Caution);
    }

    private Finding? AtStart(IEnumerable<OutputFaults> alike, Verdict verdict)
    {
        List<(OutputFaults Output, ProtectionInCondition Worst)> tripping = Worst(alike, c => c.Start?.Verdict == verdict, (_, c) => ShareOf(c));
        if (tripping.Count == 0) return null;
        (OutputFaults output, ProtectionInCondition worst) = tripping[0];
        Inrush inrush = output.Inrush!;
        Judgment start = worst.Start!.Value;
        return Find(About(tripping), Invariant($"When all on {Which(tripping)} starts at once in \"{worst.Condition}\"{Undeclared(output)}, it draws up to {inrush.PeakAmperes:0.##} A and {inrush.AmpereSquaredSeconds:G3} A²·s. ") +
            Invariant($"That is {100 * ShareOf(worst):0} % of what {output.Output.Protection} withstands{Why(output.Output.Protection!)}.{Others(tripping)}"),
            start.Value, verdict == Verdict.ThinMargin ? start.PolicyLimit : start.Limit, worst.Condition, verdict == Verdict.ThinMargin ? Severity.Caution : Severity.Failure,
            "Use a slower protective device, or devices that start one after the other.");
    }

    private static double ShareOf(ProtectionInCondition condition) => ((Ratio)condition.Start!.Value.Value!).DecimalFractions;

    // For each output the condition that is worst, the output that is worst off first.
    private static List<(OutputFaults Output, ProtectionInCondition Worst)> Worst(IEnumerable<OutputFaults> outputs, Func<ProtectionInCondition, bool> mayTrip,
        Func<OutputFaults, ProtectionInCondition, double> excess) =>
        [.. outputs.Select(o => (Output: o, Worst: o.InConditions.Where(mayTrip).OrderByDescending(c => excess(o, c)).FirstOrDefault()!))
            .Where(x => x.Worst is not null).OrderByDescending(x => excess(x.Output, x.Worst))];

    private static Subject About(List<(OutputFaults Output, ProtectionInCondition Worst)> tripping) =>
        tripping.Count == 1 ? Subject.Of(tripping[0].Output.Box, tripping[0].Output.Output) : Subject.Of(tripping[0].Output.Box);

    private static string Which(List<(OutputFaults Output, ProtectionInCondition Worst)> tripping) =>
        tripping.Count == 1 ? "it" : Invariant($"output {tripping[0].Output.Output.Number}");

    private static string Others(List<(OutputFaults Output, ProtectionInCondition Worst)> tripping) => tripping.Count == 1
        ? string.Empty
        : Invariant($" Alike are {tripping.Count} of its outputs: {string.Join(", ", tripping.Select(x => x.Output.Output.Number).OrderBy(n => n))}.");

    private static string Undeclared(OutputFaults output)
    {
        int all = output.Assessment.Devices.Count, stated = output.Assessment.Devices.Count(d => d.Model.Inrush is not null);
        return stated == all ? string.Empty : Invariant($" ({stated} of its {all} devices state what)");
    }

    private static string Why(ProtectiveDevice device) => device switch
    {
        ResettableFuse => ", by an estimate from its time to trip",
        ElectronicLimit => ", by its operating time",
        _ => string.Empty,
    };
}
