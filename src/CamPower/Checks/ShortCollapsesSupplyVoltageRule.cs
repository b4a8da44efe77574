using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.ShortCollapsesSupplyVoltage"/>.</summary>
internal sealed class ShortCollapsesSupplyVoltageRule : Rule
{
    private readonly double _seconds;

    internal ShortCollapsesSupplyVoltageRule(Duration rideThrough)
        : base("short-collapses-supply-voltage", Severity.Caution,
            "A short at one output collapses the supply voltage for longer than devices at other outputs ride through. " +
            "They go dark, or get less voltage than they accept.",
            "Use outputs with an electronic limit well below that of the supply. " +
            "Or use a supply with enough current to open the fuse at once.",
            CheckConstants.RideThrough.Source, "short takes other devices down")
    {
        _seconds = Require.NotNegative(rideThrough.Seconds, nameof(rideThrough), "s");
        Limit = rideThrough;
    }

    public override IQuantity? Limit { get; }

    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        Finding[] found = [.. InOrder(evidence)];
        return found.Concat(WithDeadBattery(evidence, [.. found.Select(f => f.About.Name)]));
    }

    // An old battery is often dead when it is needed. That and a short are two faults at once: worth a Note.
    private IEnumerable<Finding> WithDeadBattery(Evidence evidence, HashSet<string> told) =>
        from box in evidence.Faults.GroupBy(output => output.Box)
        where box.Key.Battery is not null && box.Key.Outputs.Count > 1 && !told.Contains(box.Key.Name)
        let culprits = (from output in box
                        from fault in output.Shorts
                        let supply = fault.SupplyWithDeadBattery
                        where supply is not null && LastsTooLong(supply, fault.OpeningWithDeadBattery)
                        orderby Taken(supply!) descending
                        select (output, fault, supply: supply!)).ToList()
        where culprits.Count > 0
        let first = culprits[0]
        select Find(Subject.Of(box.Key),
            Invariant($"With its battery dead, a short at {FaultRuleText.Place(first.fault)} on output {first.output.Output.Number} ") +
            $"{Does(first.supply)}. At other outputs {Devices(first.supply)}.",
            condition: first.supply.Condition, severity: Severity.Note,
            remedy: "Test the battery and its fuse every year. " + (RemedyOf(first.output) ?? Remedy));

    private IEnumerable<Finding> InOrder(Evidence evidence) =>
        from box in Require.NotNull(evidence, nameof(evidence)).Faults.GroupBy(output => output.Box)
        where box.Key.Supply.Output.Overload is not null && box.Key.Outputs.Count > 1
        let culprits = box.Select(output => (output, worst: WorstOf(output))).Where(x => x.worst is not null).ToList()
        where culprits.Count > 0
        let first = culprits.OrderByDescending(x => SeverityOf(x.output, x.worst!)).ThenByDescending(x => Taken(x.worst!.Supply)).First()
        select Find(Subject.Of(box.Key),
            Invariant($"A short at {FaultRuleText.Place(first.worst!)} on output {first.output.Output.Number} ") +
            $"{Does(first.worst!.Supply)}. At other outputs {Devices(first.worst.Supply)}. " +
            $"{Ending(first.output, first.worst)}{Others(culprits.Count, box.Count())}",
            condition: first.worst.Supply.Condition, severity: SeverityOf(first.output, first.worst), remedy: RemedyOf(first.output));

    // What a short does to the supply.
    private static string Does(SupplyDuringFault supply) => supply.State switch
    {
        SupplyState.Dips => Invariant($"pulls the supply down to {supply.Voltage!.Value.Volts:0.00} V"),
        SupplyState.Pulses => "makes the supply pulse",
        SupplyState.Off => "shuts the supply off",
        _ => $"leaves the supply so that it {supply}",
    };

    // Null, for the remedy of the rule, where the supply has no limit of its own.
    private static string? RemedyOf(OutputFaults output)
    {
        double own = output.Box.Supply.Output.Overload!.Lowest.LimitAmperes;
        if (double.IsInfinity(own)) return null;
        string better = Invariant($"Use outputs with an electronic limit well below the supply's own {own:0.0#} A.");
        return FaultRuleText.IsUnprotected(output) || output.Output.Protection is null
            ? better
            : $"{better} Or use a supply with enough current to open the {FaultRuleText.Protection(output)} at once.";
    }

    private static Severity SeverityOf(OutputFaults output, ShortCircuit fault)
    {
        bool isUnknown = fault.Verdict == OperatingVerdict.None;
        if (isUnknown || (FaultRuleText.IsUnprotected(output) && output.Box.IsAdapter)) return Severity.Caution;
        OpeningTimes opening = fault.OpeningInTime;
        bool endsSoon = opening.Verdict == OperatingVerdict.Operates
            && !(opening.Latest is Duration latest && latest.Seconds > CheckConstants.LongestDark.Value);
        return endsSoon ? Severity.Caution : Severity.Failure;
    }

    private static int Taken(SupplyDuringFault rail) => rail.Dark.Count + rail.BelowWindow.Count;

    // Where the drop-out voltage of a device is not stated, it is known only that it gets less than it accepts.
    private static string Devices(SupplyDuringFault rail)
    {
        string dark = Invariant($"{rail.Dark.Count} {(rail.Dark.Count == 1 ? "device goes" : "devices go")} dark");
        string get = rail.BelowWindow.Count == 1 ? "device gets" : "devices get";
        string below = Invariant($"{rail.BelowWindow.Count} {get} less voltage than accepted");
        if (rail.BelowWindow.Count == 0) return dark;
        return rail.Dark.Count == 0 ? below : $"{dark} and {below}";
    }

    private static string Ending(OutputFaults output, ShortCircuit fault)
    {
        if (fault.Verdict == OperatingVerdict.None) return "It is unknown when the short ends.";
        if (FaultRuleText.IsUnprotected(output)) return "There is no protective device; the short lasts until it is removed.";
        string opens = $"The {FaultRuleText.Protection(output)} {fault.OpeningInTime}";
        return fault.OpeningInTime == fault.Opening
            ? $"{opens}."
            : $"{opens} with its battery in order; with a dead battery it {fault.Opening}.";
    }

    private static string Others(int culprits, int used)
    {
        if (culprits == 1) return string.Empty;
        return culprits == used
            ? Invariant($" The same at all {used} outputs in use.")
            : Invariant($" The same at {culprits} of the {used} outputs in use.");
    }

    private ShortCircuit? WorstOf(OutputFaults output) => output.Shorts.Where(TakesOthersDown)
        .OrderByDescending(s => SeverityOf(output, s)).ThenByDescending(s => Taken(s.Supply)).FirstOrDefault();

    private bool TakesOthersDown(ShortCircuit fault) => LastsTooLong(fault.Supply, fault.OpeningInTime);

    private bool LastsTooLong(SupplyDuringFault supply, OpeningTimes opening)
    {
        if (Taken(supply) == 0) return false;
        return !(opening.Verdict == OperatingVerdict.Operates && opening.Latest is Duration latest && latest.Seconds <= _seconds);
    }
}
