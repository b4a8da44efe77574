using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.ShortMayNotBeInterrupted"/>.</summary>
/// <remarks>Outputs of a box with the same protective device are one finding, of the worst output.</remarks>
internal sealed class ShortMayNotBeInterruptedRule() : Rule("short-may-not-be-interrupted", Severity.Failure,
    "A short draws too little current for its protective device to operate for certain, or there is no protective device. " +
    "The supply does not end the short either.",
    "Use outputs with an electronic limit that is certain to open at that current, or add one in line.", Sources.HotSpotPolicy,
    "short may last")
{
    private const string NothingToDo = "Nothing needs to be done: the cable carries it without damage.";

    private static readonly double Harmless = CheckConstants.HarmlessSpot.Value, Hot = CheckConstants.HotSpot.Value;

    public override IReadOnlyList<string> YieldsTo { get; } = ["protection-missing"];

    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from alike in Require.NotNull(evidence, nameof(evidence)).Faults.Where(o => o.Output.Protection is not null)
            .GroupBy(o => (o.Box, o.Output.Protection))
        let lasting = alike.Select(LastingShort.WorstOf).OfType<LastingShort>().ToList()
        from ofSeverity in lasting.GroupBy(s => s.Severity)
        select Of([.. ofSeverity.OrderBy(s => s.Fault.Smallest.Amperes)]);

    private Finding Of(List<LastingShort> alike)
    {
        LastingShort worst = alike[0];
        OutputFaults output = worst.Output;
        string who = alike.Count == 1 ? string.Empty : Invariant($" of output {output.Output.Number}");
        string ending = FaultRuleText.IsUnprotected(output)
            ? "There is no protective device."
            : $"Its {FaultRuleText.Protection(output)} {FaultRuleText.Lasting(worst.Fault)}.";
        return Find(FaultRuleText.About(alike.ConvertAll(s => s.Output)),
            $"A short at {FaultRuleText.Place(worst.Fault)}{who} draws at least " +
            Invariant($"{worst.Fault.Smallest.Amperes:0.00} A. {ending} ") +
            $"{Spot(worst.Fault)} The conductors {FaultRuleText.Withstand(worst.Fault)}." +
            FaultRuleText.Others(alike.ConvertAll(s => s.Output)),
            worst.Fault.Smallest, severity: worst.Severity, remedy: worst.Severity == Severity.Note ? NothingToDo : RemedyOf(worst));
    }

    private static string Spot(ShortCircuit fault) => fault.PoorShortPower is Power most
        ? Invariant($"A poor contact there (up to {fault.PoorShortAmperes:0.0} A) heats with up to {(double)most.Watts:0} W.")
        : "The heat of a poor contact there has no known limit.";

    // Where a short at the terminals ends, it is the resistance of the cable that keeps this one from ending.
    private static string RemedyOf(LastingShort lasting)
    {
        string below = Invariant($"{Math.Floor(lasting.Fault.Smallest.Amperes * 100) / 100:0.00} A");
        string limit = lasting.Output.Box.IsAdapter
            ? $"Use an adapter with an electronic limit, or add one in line. It must open below {below}."
            : $"Use a box whose outputs have an electronic limit, or add one in line. It must open below {below}.";
        return FaultRuleText.IsUnprotected(lasting.Output) || LastingShort.Lasts(lasting.Output.AtTerminals)
            ? limit
            : $"{limit} Or use larger conductors up to {FaultRuleText.Place(lasting.Fault)}.";
    }

    /// <summary>A short that nothing is certain to interrupt.</summary>
    private sealed class LastingShort(OutputFaults output, ShortCircuit fault)
    {
        internal OutputFaults Output => output;

        internal ShortCircuit Fault => fault;

        internal Severity Severity { get; } = SeverityOf(output, fault);

        internal static LastingShort? WorstOf(OutputFaults output)
        {
            LastingShort? worst = output.Shorts.Where(Lasts).Select(s => new LastingShort(output, s))
                .OrderByDescending(s => s.Severity).ThenBy(s => s.Fault.Smallest.Amperes).FirstOrDefault();

            // A Note says that the protective device does nothing, and that no harm comes of it.
            return worst?.Severity == Severity.Note && FaultRuleText.IsUnprotected(output) ? null : worst;
        }

        // A short above the rating of its protective device, one that lasts for a known time, and one that burns its conductors have other
        // rules.
        internal static bool Lasts(ShortCircuit fault) =>
            fault.Opening.Verdict is OperatingVerdict.DoesNotOperate or OperatingVerdict.MayOperate
            && fault.LetThrough is null && fault.WithstandVerdict != WithstandVerdict.DoesNotWithstand;

        private static Severity SeverityOf(OutputFaults output, ShortCircuit fault)
        {
            // The limits of the class are there so that such a fault does no harm.
            bool isOfClass = output.Output.ClaimedClass is PowerLimitClass claimed
                && output.Box.AssessPowerLimit(output.Output.Number, claimed).Verdict == PowerLimitVerdict.WithinNumbers;
            if (isOfClass && fault.WithstandVerdict != WithstandVerdict.HotterThanInService) return Severity.Note;
            bool isTooHot = fault.WithstandVerdict == WithstandVerdict.HotterThanInService || Limits.IsAbove(fault.PoorShortWatts, Hot);
            if (isTooHot) return Severity.Failure;
            bool isHot = Limits.IsAbove(fault.PoorShortWatts, Harmless) && !output.IsProtectedBySource;
            return isHot || output.Assessment.Devices.Count > 1 ? Severity.Caution : Severity.Note;
        }
    }
}
