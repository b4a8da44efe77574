using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A protective device that may open though nothing is wrong: under the current of a condition, or when all behind it starts at once.</summary>
/// <remarks>At the temperature of its box. Outputs of a box that have the same device are one finding, of the one that is worst off. Of a start
/// nothing is said where no device declares its inrush.</remarks>
public sealed class NuisanceTripRule() : Rule("nuisance-trip", Severity.Failure,
    "In some condition, or when all its devices start at once, an output takes more than its protective device is sure to carry at the temperature of the box.",
    "Use a device that carries the current there, a slower one where it is the start, cool the box, or spread the load.", Sources.DeviceCarriesItsRating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from alike in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs.GroupBy(output => (output.Box, output.Output.Protection))
        from finding in new[] { InService(alike), AtStart(alike) }
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

    private Finding? AtStart(IEnumerable<OutputFaults> alike)
    {
        List<(OutputFaults Output, ProtectionInCondition Worst)> tripping = Worst(alike, c => c.StandsInrush == false, (o, c) => o.Inrush!.PeakAmperes / c.Carried!.Value.Amperes);
        if (tripping.Count == 0) return null;
        (OutputFaults output, ProtectionInCondition worst) = tripping[0];
        Inrush inrush = output.Inrush!;
        return Find(About(tripping),
            Invariant($"When all on {Which(tripping)} starts at once in \"{worst.Condition}\"{Undeclared(output)}, it draws up to {inrush.PeakAmperes:0.##} A and {inrush.AmpereSquaredSeconds:G3} A²·s: {output.Output.Protection} carries {worst.Carried!.Value.Amperes:0.00} A there, and may open{Why(output.Output.Protection!)}.{Others(tripping)}"),
            inrush.Peak, worst.Carried, worst.Condition);
    }

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
        : Invariant($" So may {tripping.Count} of its outputs: {string.Join(", ", tripping.Select(x => x.Output.Output.Number).OrderBy(n => n))}.");

    private static string Undeclared(OutputFaults output)
    {
        int all = output.Assessment.Devices.Count, declared = output.Assessment.Devices.Count(d => d.Model.Inrush is not null);
        return declared == all ? string.Empty : Invariant($" ({declared} of its {all} devices declare what)");
    }

    private static string Why(ProtectiveDevice device) => device switch
    {
        Fuse { LeastMeltingIntegral: JouleIntegral least } => Invariant($": {least.AmpereSquaredSeconds:G3} A²·s may melt it"),
        Fuse => ": no gate holds it closed under so much, and its least melting I²t is not declared",
        _ => ", by an estimate from its time to trip",
    };
}
