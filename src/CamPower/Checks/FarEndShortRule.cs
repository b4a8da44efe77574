using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A short on what an output feeds that nothing ends for certain: as severe as what it does meanwhile.</summary>
/// <remarks>
/// A dead short that the conductors withstand continuously hurts nobody by itself; a poor one is a hot spot. Where the source protects the conductors (IEC 60364-4-43, 436), and up to
/// <see cref="CheckConstants.HarmlessSpot"/>, it is a Note, up to <see cref="CheckConstants.HotSpot"/> a Caution, above a Failure, and so are conductors that get
/// hotter than they may in service. Where the output feeds several devices the others go dark with it: at least a Caution. A conductor that
/// may pass the limit of its insulation is <see cref="LetThroughRule"/>'s, devices at other outputs are <see cref="ShortDragsRailDownRule"/>'s.
/// </remarks>
public sealed class FarEndShortRule() : Rule("far-end-short-does-not-clear", Severity.Failure,
    "A short on what an output feeds draws too little for its protective device to operate for certain, and the supply does not end it either.",
    "Put an electronic limit on the output that is certain to open at that current.", Sources.HotSpotPolicy)
{
    private static readonly double Harmless = CheckConstants.HarmlessSpot.Value, Hot = CheckConstants.HotSpot.Value;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults
        where output.Output.Protection is not null && !ReferenceEquals(output.Output.Protection, ProtectiveDevice.None)
        let worst = output.Shorts.Where(s => Lasts(s)).OrderByDescending(s => SeverityOf(output, s)).ThenBy(s => s.Smallest.Amperes).FirstOrDefault()
        where worst is not null
        select Find(Subject.Of(output.Box, output.Output),
            Invariant($"A short at {worst.Place} draws as little as {worst.Smallest.Amperes:0.00} A: {output.Output.Protection} {worst.Opening}{FaultRuleText.Undeclared(worst)}. ") +
            Invariant($"{Spot(worst)} The conductors {FaultRuleText.Withstand(worst)}."),
            worst.Smallest, severity: SeverityOf(output, worst), remedy: RemedyOf(worst));

    // A device that is asked for more than its rating is another rule's; so is one that lasts for a known time, and one that burns its conductors.
    private static bool Lasts(ShortCircuit fault) => fault.Opening.Verdict is OperatingVerdict.DoesNotClear or OperatingVerdict.MayClear
        && fault.LetThrough is null && fault.WithstandVerdict != WithstandVerdict.DoesNotStand;

    private static Severity SeverityOf(OutputFaults output, ShortCircuit fault)
    {
        if (fault.WithstandVerdict == WithstandVerdict.HotterThanInService || Limits.IsAbove(fault.PoorShortWatts, Hot)) return Severity.Failure;
        bool isHot = Limits.IsAbove(fault.PoorShortWatts, Harmless) && !output.IsProtectedBySource;
        return isHot || output.Assessment.Devices.Count > 1 ? Severity.Caution : Severity.Note;
    }

    private static string Spot(ShortCircuit fault) => fault.PoorShortPower is Power most
        ? Invariant($"A poor contact there dissipates up to {(double)most.Watts:0} W.")
        : "Nothing bounds what a poor contact there dissipates.";

    private static string RemedyOf(ShortCircuit fault) => Invariant(
        $"Put an electronic limit on the output that is certain to open below {Math.Floor(fault.Smallest.Amperes * 100) / 100:0.00} A, or where the cable limits the current, use larger conductors.");
}
