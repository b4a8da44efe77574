using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.NuisanceTrip"/>.</summary>
internal sealed class NuisanceTripRule() : Rule("nuisance-trip", Severity.Failure,
    "An output draws more than its protective device is certain to carry in the air of the box, in a condition or at a start.",
    "Use a fuse or limit that carries this current at the temperature of the box. Or cool the box, or spread the load.",
    Sources.DeviceCarriesItsRating, "fuse or limit may open in normal service")
{
    private static readonly Surge Start = new("all its devices start at once", c => c.Start, (o, _) => o.Inrush, m => m.Inrush);

    private static readonly Surge Switching = new("illuminators or motors are switched on at once", c => c.Switching,
        (o, c) => o.Assessment.SwitchedInrushIn(c.Condition, c.Current.Amperes), m => m.SwitchedInrush);

    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from alike in Require.NotNull(evidence, nameof(evidence)).Faults.Where(o => o.Output.Protection is not null)
            .GroupBy(output => (output.Box, output.Output.Protection))
        let inService = InService(alike) ?? NearlyInService(alike)
        let atStart = AtSurge(alike, Start)
        let whenSwitching = AtSurge(alike, Switching)
        from finding in new[] { inService, atStart, whenSwitching }
        where finding is not null
        select finding;

    private Finding? InService(IEnumerable<OutputFaults> alike)
    {
        List<(OutputFaults Output, ProtectionInCondition Worst)> tripping =
            Worst(alike, c => c.MayTrip, (_, c) => c.Current.Amperes / c.Carried!.Value.Amperes);
        if (tripping.Count == 0) return null;
        (OutputFaults output, ProtectionInCondition worst) = tripping[0];
        return Find(About(tripping),
            $"{Who(tripping)} draws {Digits.Of(worst.Current.Amperes, worst.Carried!.Value.Amperes)} A in \"{worst.Condition}\"; " +
            Invariant($"its {FaultRuleText.Protection(output)} carries {worst.Carried.Value.Amperes:0.00} A{At(worst)} ") +
            $"and {worst.Opening}.{Others(tripping)}",
            worst.Current, worst.Carried, worst.Condition, remedy: RemedyOfLoad(worst));
    }

    private Finding? NearlyInService(IEnumerable<OutputFaults> alike)
    {
        List<(OutputFaults Output, ProtectionInCondition Worst)> close =
            Worst(alike, c => c.Load.Verdict == Verdict.ThinMargin, (_, c) => c.Current.Amperes / c.Carried!.Value.Amperes);
        if (close.Count == 0) return null;
        (OutputFaults output, ProtectionInCondition worst) = close[0];
        double certain = ((ElectricCurrent)worst.Load.PolicyLimit!).Amperes, carried = worst.Carried!.Value.Amperes;
        return Find(About(close),
            $"{Who(close)} draws {Digits.Of(worst.Current.Amperes, carried)} A in \"{worst.Condition}\"; " +
            Invariant($"its {FaultRuleText.Protection(output)} carries {carried:0.00} A{At(worst)}. ") +
            Invariant($"Policy maximum {certain:0.00} A: {carried:0.00} A − {100 * (1 - (certain / carried)):0.#} % of tolerance.") +
            Others(close),
            worst.Current, worst.Load.PolicyLimit, worst.Condition, Severity.Caution, RemedyOfLoad(worst, carried / certain));
    }

    private static string At(ProtectionInCondition condition) => Invariant($" at {condition.AirCelsius:0.#} °C");

    // With the tolerance that the policy takes off what it carries.
    private static string RemedyOfLoad(ProtectionInCondition worst, double tolerance = 1)
    {
        double amperes = Math.Ceiling(worst.Current.Amperes * tolerance * 100) / 100;
        return Invariant($"Use a fuse or limit that carries {amperes:0.00} A{At(worst)}. Or cool the box, or spread the load.");
    }

    private Finding? AtSurge(IEnumerable<OutputFaults> alike, Surge surge) =>
        AtSurge(alike, surge, Verdict.Violated) ?? AtSurge(alike, surge, Verdict.ThinMargin);

    private Finding? AtSurge(IEnumerable<OutputFaults> alike, Surge surge, Verdict verdict)
    {
        List<(OutputFaults Output, ProtectionInCondition Worst)> tripping =
            Worst(alike, c => surge.Judged(c)?.Verdict == verdict, (_, c) => ShareOf(surge, c));
        if (tripping.Count == 0) return null;
        (OutputFaults output, ProtectionInCondition worst) = tripping[0];
        Inrush inrush = surge.Drawn(output, worst)!;
        Judgment judged = surge.Judged(worst)!.Value;
        bool isThin = verdict == Verdict.ThinMargin;
        string policy = isThin ? Invariant($"; above {((Ratio)judged.PolicyLimit!).Percent:0} % each start wears it") : string.Empty;
        string drawn = output.Output.Protection is ElectronicLimit limit
            ? $"{Who(tripping)} draws up to {Text(inrush.PeakAmperes)} A in \"{worst.Condition}\" when {surge.When}." +
                $"{NotAllStated(output, surge)} {LastsAt(limit, ShareOf(surge, worst))}"
            : $"{Who(tripping)} draws up to {Text(inrush.PeakAmperes)} A ({FaultRuleText.Integral(inrush.Integral)}) " +
                $"in \"{worst.Condition}\" when {surge.When}.{NotAllStated(output, surge)} " +
                Invariant($"That is {100 * ShareOf(surge, worst):0} % of what its {FaultRuleText.Protection(output)} withstands") +
                $"{(output.Output.Protection is ResettableFuse ? ", estimated from its time to trip" : " before it melts")}{policy}.";
        return Find(About(tripping), drawn + Others(tripping),
            judged.Value, isThin ? judged.PolicyLimit : judged.Limit, worst.Condition, isThin ? Severity.Caution : Severity.Failure,
            RemedyOfSurge(output, ShareOf(surge, worst)));
    }

    private static string Text(double amperes) => Invariant($"{amperes:0.##}");

    // It holds the inrush down and so prolongs it; the share is that of its operating time.
    private static string LastsAt(ElectronicLimit limit, double share)
    {
        string opens = limit.OpensNotBefore is null ? $"opens within {OpeningTimes.Text(OpeningSeconds(limit))}"
            : $"may open after {OpeningTimes.Text(OpeningSeconds(limit))}";
        return $"Held to its limit, the inrush lasts {OpeningTimes.Text(share * OpeningSeconds(limit))}; " +
            $"its protective device ({limit}) {opens}.";
    }

    // The time against which an inrush is held: the shortest where it is stated.
    private static double OpeningSeconds(ElectronicLimit limit) => (limit.OpensNotBefore ?? limit.OpensWithin).Seconds;

    private static string RemedyOfSurge(OutputFaults output, double share)
    {
        string spread = output.Assessment.Devices.Count > 1 ? "spread the devices over more outputs" : "feed the device from another box";
        return output.Output.Protection is ElectronicLimit limit && share > 1
            ? $"Use a limit that opens only after {OpeningTimes.Text(share * OpeningSeconds(limit))}, or {spread}."
            : $"Use a slower protective device, or {spread}.";
    }

    private static double ShareOf(Surge surge, ProtectionInCondition condition) =>
        ((Ratio)surge.Judged(condition)!.Value.Value!).DecimalFractions;

    // For each output the condition that is worst, the output that is worst off first.
    private static List<(OutputFaults Output, ProtectionInCondition Worst)> Worst(IEnumerable<OutputFaults> outputs,
        Func<ProtectionInCondition, bool> mayTrip, Func<OutputFaults, ProtectionInCondition, double> excess) =>
        [.. outputs.Select(o => (Output: o, Worst: WorstOf(o.InConditions, mayTrip, c => excess(o, c))!))
            .Where(x => x.Worst is not null).OrderByDescending(x => excess(x.Output, x.Worst))];

    private static Subject About(List<(OutputFaults Output, ProtectionInCondition Worst)> tripping) =>
        FaultRuleText.About(tripping.ConvertAll(x => x.Output));

    private static string Who(List<(OutputFaults Output, ProtectionInCondition Worst)> tripping) =>
        tripping.Count == 1 ? "It" : Invariant($"Output {tripping[0].Output.Output.Number}");

    private static string Others(List<(OutputFaults Output, ProtectionInCondition Worst)> tripping) =>
        FaultRuleText.Others(tripping.ConvertAll(x => x.Output));

    private static string NotAllStated(OutputFaults output, Surge surge)
    {
        int all = output.Assessment.Devices.Count, stated = output.Assessment.Devices.Count(d => surge.OfModel(d.Model) is not null);
        return stated == all ? string.Empty : Invariant($" The inrush of {stated} of its {all} devices is stated.");
    }

    /// <summary>One of the moments at which an output draws more than it does in service.</summary>
    /// <param name="When">When that is.</param>
    /// <param name="Judged">The judgment of it.</param>
    /// <param name="Drawn">What is drawn.</param>
    /// <param name="OfModel">What one device draws.</param>
    private sealed record Surge(string When, Func<ProtectionInCondition, Judgment?> Judged,
        Func<OutputFaults, ProtectionInCondition, Inrush?> Drawn, Func<Device, Inrush?> OfModel);
}
