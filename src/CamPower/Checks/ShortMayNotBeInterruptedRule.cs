using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.ShortMayNotBeInterrupted"/>.</summary>
internal sealed class ShortMayNotBeInterruptedRule() : Rule("short-may-not-be-interrupted", Severity.Failure,
    "A short draws too little current for its protective device to operate for certain, and the supply does not end it either.",
    "Put an electronic limit on the output that is certain to open at that current.", Sources.HotSpotPolicy)
{
    private static readonly double Harmless = CheckConstants.HarmlessSpot.Value, Hot = CheckConstants.HotSpot.Value;

    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults
        where output.Output.Protection is not null && !ReferenceEquals(output.Output.Protection, ProtectiveDevice.None)
        let worst = output.Shorts.Where(s => Lasts(s)).OrderByDescending(s => SeverityOf(output, s))
            .ThenBy(s => s.Smallest.Amperes).FirstOrDefault()
        where worst is not null
        select Find(Subject.Of(output.Box, output.Output),
            Invariant($"A short at {FaultRuleText.Place(worst)} draws at least {worst.Smallest.Amperes:0.00} A; ") +
            $"its {FaultRuleText.Protection(output)} {worst.Opening}{FaultRuleText.NotStated(worst)}. " +
            $"{Spot(worst)} The conductors {FaultRuleText.Withstand(worst)}.",
            worst.Smallest, severity: SeverityOf(output, worst), remedy: RemedyOf(worst));

    // A short above the rating of its protective device, one that lasts for a known time, and one that burns its conductors have other
    // rules.
    private static bool Lasts(ShortCircuit fault) => fault.Opening.Verdict is OperatingVerdict.DoesNotOperate or OperatingVerdict.MayOperate
        && fault.LetThrough is null && fault.WithstandVerdict != WithstandVerdict.DoesNotWithstand;

    private static Severity SeverityOf(OutputFaults output, ShortCircuit fault)
    {
        bool isTooHot = fault.WithstandVerdict == WithstandVerdict.HotterThanInService || Limits.IsAbove(fault.PoorShortWatts, Hot);
        if (isTooHot) return Severity.Failure;
        bool isHot = Limits.IsAbove(fault.PoorShortWatts, Harmless) && !output.IsProtectedBySource;
        return isHot || output.Assessment.Devices.Count > 1 ? Severity.Caution : Severity.Note;
    }

    private static string Spot(ShortCircuit fault) => fault.PoorShortPower is Power most
        ? Invariant($"A poor contact there dissipates up to {(double)most.Watts:0} W.")
        : "The power in a poor contact there has no known limit.";

    private static string RemedyOf(ShortCircuit fault) =>
        "Put an electronic limit on the output that is certain to open " +
        Invariant($"below {Math.Floor(fault.Smallest.Amperes * 100) / 100:0.00} A. ") +
        "Where the cable limits the current, you can use larger conductors instead.";
}
