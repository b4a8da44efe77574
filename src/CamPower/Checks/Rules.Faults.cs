using System;
using System.Linq;
using CamPower.Checks;
using CamPower.Faults;
using CamPower.Protection;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <content>Rules on shorts, overloads, protective devices and what conductors withstand.</content>
public static partial class Rules
{
    /// <summary>An output has no protective device, and its conductors may not withstand a short continuously.</summary>
    /// <remarks>A source that cannot exceed their ampacity protects them (IEC 60364-4-43, 436). An adapter usually limits itself; where it
    /// is not stated how, <see cref="FaultsUnknown"/> names it.</remarks>
    public static Rule ProtectionMissing { get; } = new SimpleRule("protection-missing", "no protective device", Severity.Danger,
        "An output has no protective device, and it is not certain that its conductors withstand a short continuously.",
        "Protect the output with a fuse or an electronic limit that protects its cable.",
        Sources.OvercurrentProtection, (rule, evidence) =>
            from output in evidence.Faults
            where output.Output.Protection is { IsNone: true }
                && !(output.Box.IsAdapter && output.MissingForVerdict != FaultData.None)
            let worst = output.Shorts
                .FirstOrDefault(s => s.WithstandVerdict is not (WithstandVerdict.Withstands or WithstandVerdict.NoConductor))
            where worst is not null
            let draws = worst.Largest is ElectricCurrent most ? Invariant($"draws up to {most.Amperes:0.0} A") : "has no known limit"
            select rule.Find(Subject.Of(output.Box, output.Output),
                $"A short at {FaultRuleText.Place(worst)} {draws}, and no protective device interrupts it. " +
                $"The conductors {FaultRuleText.Withstand(worst)}."));

    /// <summary>A supply gives more voltage than the protective device at an output is rated to interrupt.</summary>
    public static Rule ProtectionVoltageRatingExceeded { get; } = new SimpleRule("protection-voltage-rating-exceeded",
        "too much voltage for the fuse or limit", Severity.Danger,
        "A supply gives more voltage than the rating of the protective device at an output. " +
        "The protective device may arc instead of opening.",
        "Use a protective device with a higher voltage rating.",
        Sources.DeviceVoltageRating, (rule, evidence) =>
            from box in evidence.Assessment.Boxes
            from output in box.Outputs
            where output.Output.Protection is not null
            let supply = box.Box.Supply.Output
            let judged = output.Output.Protection!.JudgeVoltage(supply.HighestVolts, supply.IsDc)
            where judged.IsViolated
            let rating = (ElectricPotential)judged.Limit!
            let volts = ((ElectricPotential)judged.Value!).Volts
            select rule.Find(Subject.Of(box.Box, output.Output),
                $"Its supply gives up to {Digits.Of(volts, rating.Volts)} V{(volts > supply.HighestVolts ? " at the crest" : "")}; " +
                $"its {FaultRuleText.KindOf(output.Output.Protection)} ({output.Output.Protection}) is rated for at most " +
                $"{Digits.Of(rating.Volts, volts, "0.##")} V.",
                judged.Value, rating));

    /// <summary>The prospective current of a short is above the breaking capacity of its protective device.</summary>
    /// <remarks>It is that with a link of no resistance in place of the device; the supply limits it.</remarks>
    public static Rule BreakingCapacityExceeded { get; } = new SimpleRule("breaking-capacity-exceeded",
        "short above the breaking capacity", Severity.Danger,
        "The current of a short is above the breaking capacity of the protective device. It may burst or continue to arc.",
        "Use a protective device with a higher breaking capacity, or a supply that limits its current.",
        Sources.Iec60127BreakingCapacity, (rule, evidence) =>
            from output in evidence.Faults
            where output.Output.Protection?.BreakingCapacity is not null
            let worst = output.Shorts.Where(s => s.IsWithinBreakingCapacity == false)
                .OrderByDescending(s => s.InterruptedAmperes).FirstOrDefault()
            where worst is not null
            let capacity = output.Output.Protection!.BreakingCapacity!.Value
            let asked = worst.InterruptedAmperes
            select double.IsInfinity(asked)
                ? rule.Find(Subject.Of(output.Box, output.Output),
                    $"Nothing that is stated limits the current of a short at {FaultRuleText.Place(worst)}; " +
                    Invariant($"its {FaultRuleText.Protection(output)} interrupts at most {capacity.Amperes:0.0} A."))
                : rule.Find(Subject.Of(output.Box, output.Output),
                    $"The prospective current of a short at {FaultRuleText.Place(worst)} is " +
                    $"{Digits.Of(asked, capacity.Amperes, "0.0")} A; " +
                    $"its {FaultRuleText.Protection(output)} interrupts at most {Digits.Of(capacity.Amperes, asked, "0.0")} A.",
                    ElectricCurrent.FromAmperes(asked), capacity));

    /// <summary>The let-through I²t of a short, or its lasting current, may heat a conductor above the limit of its insulation.</summary>
    /// <remarks>The current is largest at the origin of each piece of cable: a short just behind a joint heats the cable that begins
    /// there.</remarks>
    public static Rule LetThroughAboveConductorWithstand { get; } = new SimpleRule("let-through-above-conductor-withstand",
        "short may overheat the cable", Severity.Danger,
        "A short may heat a conductor above the limit of its insulation before the protective device has operated.",
        "Use a smaller or faster protective device, or larger conductors.",
        Sources.AdiabaticWithstand, (rule, evidence) =>
            from output in evidence.Faults
            where output.Output.Protection is { IsNone: false }
            let worst = output.Shorts.Where(s => s.WithstandVerdict == WithstandVerdict.DoesNotWithstand)
                .OrderByDescending(s => s.LetThrough?.AmpereSquaredSeconds ?? double.PositiveInfinity).FirstOrDefault()
            where worst is not null
            select rule.Find(Subject.Of(output.Box, output.Output),
                Invariant($"A short at {FaultRuleText.Place(worst)} draws up to {worst.Largest!.Value.Amperes:0.0} A; ") +
                $"its {FaultRuleText.Protection(output)} {worst.Opening}. {TimeOfTest(output, worst)}" +
                "Until then a conductor may heat above the limit of its insulation.",
                remedy: worst is { LetThrough: JouleIntegral most, Withstand: JouleIntegral withstood }
                    ? $"Use a smaller or faster protective device, or {LargerConductors.That(output, most, withstood)}."
                    : null));

    /// <summary>A short on what an output feeds may last, because nothing is certain to interrupt it.</summary>
    /// <remarks>
    /// A dead short that the conductors withstand continuously does no harm; a poor one is a hot spot. A hot spot is a Note where the
    /// source protects the conductors (IEC 60364-4-43, 436) and up to 15 W, a Caution up to 100 W, and a Failure above. It is no Danger: it
    /// needs a contact that is poor and stays poor, and nothing burns while the wiring is sound. Conductors hotter than they may be in
    /// service are a Failure too. Where the output feeds several devices, the others go dark with it: at least a Caution. An output without
    /// a protective device is judged like one whose protective device does not operate; where that is a Note, there is no finding.
    /// Conductors that may pass the limit of their insulation belong to <see cref="LetThroughAboveConductorWithstand"/>, devices at other
    /// outputs to <see cref="ShortCollapsesSupplyVoltage"/>.
    /// </remarks>
    public static Rule ShortMayNotBeInterrupted { get; } = new ShortMayNotBeInterruptedRule();

    /// <summary>A protective device may open in normal service: at the current of a condition, when all its devices start at once, or as
    /// their illuminators or motors are switched on.</summary>
    /// <remarks>At the temperature of its box. Outputs of a box with the same protective device are one finding, of the worst output. A
    /// start above the policy percent of a fuse's melting I²t is a Caution. Nothing is said of a start where no device states its inrush,
    /// or where it is not known what the protective device withstands: see <see cref="FaultsUnknown"/>.</remarks>
    public static Rule NuisanceTrip { get; } = new NuisanceTripRule();

    /// <summary>A short at one output takes down devices at other outputs, or gives them less voltage than they accept.</summary>
    /// <remarks>A Caution where the protective device is certain to operate within a minute. A Failure where nothing is certain to end it:
    /// the protective device may not operate, or the shorted output has none. A Caution for an adapter, whose devices share one output in
    /// effect, and where the end is unknown because data is not stated.</remarks>
    /// <param name="rideThrough">How long a device stays up without its supply, at least 0; null for 20 ms. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rideThrough"/> is negative, or not finite.</exception>
    public static Rule ShortCollapsesSupplyVoltage(Duration? rideThrough = null) =>
        new ShortCollapsesSupplyVoltageRule(rideThrough ?? Duration.FromMilliseconds(CheckConstants.RideThrough.Value));

    /// <summary>A fuse carries more of its rating continuously than a policy allows.</summary>
    /// <remarks>It covers fuses to UL 248-14 and blade fuses, which are tested closed at 1.1 times their rating. A fuse that stays closed
    /// at 1.5 times its rating for an hour, as in IEC 60127, may carry its rating, and nothing is said of it.</remarks>
    /// <param name="loading">Highest load in percent of the rating, re-rated for the temperature of the box, above 0 and at most 100 %;
    /// null for 75 %.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="loading"/> is outside that range.</exception>
    public static Rule FuseAboveContinuousPolicy(Ratio? loading = null)
    {
        Ratio policy = loading ?? Ratio.FromPercent(ProtectionConstants.FuseContinuousShare.Value);
        double share = Require.Positive(Require.Within(policy.DecimalFractions, 0, 1, nameof(loading), ""), nameof(loading), "");
        return new SimpleRule("fuse-above-continuous-policy", "fuse close to its rating", Severity.Caution,
            "The continuous current of a fuse is above the policy percent of its rating. " +
            "Start-up and conditions shorter than 3 h do not count.",
            "Use the next larger fuse that the cable allows.",
            ProtectionConstants.FuseContinuousShare.Source, limit: policy, check: (rule, evidence) =>
                from output in evidence.Faults
                where output.Output.Protection is Fuse { Characteristic.CarriesItsRating: false }
                let worst = Rule.WorstOf(output.InConditions, IsContinuousLoad, c => c.ShareOfRating!.Value.DecimalFractions)
                where worst is not null && Limits.IsAbove(worst.ShareOfRating!.Value.DecimalFractions, share)
                let maximum = share * worst.Carried!.Value
                select rule.Find(Subject.Of(output.Box, output.Output),
                    $"It draws {Digits.Of(worst.Current.Amperes, maximum.Amperes)} A in \"{worst.Condition}\"; " +
                    $"policy maximum {Digits.Of(maximum.Amperes, worst.Current.Amperes)} A: " +
                    Invariant($"{share * 100:0.#} % of {worst.Carried!.Value.Amperes:0.00} A, ") +
                    $"the rating of its fuse ({output.Output.Protection}) in that air.",
                    worst.Current, maximum, worst.Condition));
    }

    /// <summary>A conductor carries more current than its ampacity, in its installation method and air temperature.</summary>
    /// <remarks>
    /// An insulation that is not stated counts as 60 °C. Where the installation method is not stated, gauge sizes count as alone in a cable
    /// or raceway; of metric sizes the most favorable method decides on danger, and the least favorable one gives a Caution. Copper and
    /// aluminum from 18 AWG to 10 AWG are held to their continuous load too, except behind an output of Class 2; in a condition stated to
    /// be shorter than 3 h, to their largest protective device. Nothing is said here of larger sizes than the method covers; smaller ones
    /// count as the smallest that it covers. <see cref="ValueOutsideValidatedRange"/> names both. The local code decides.
    /// </remarks>
    public static Rule ConductorOverAmpacity { get; } = new ConductorOverAmpacityRule();

    /// <summary>A protective device carries more continuously than a conductor behind it.</summary>
    /// <remarks>
    /// A source that cannot exceed the ampacity of a conductor protects it (IEC 60364-4-43, 436): the greatest current that the supply
    /// sustains in an overload caps that of the protective device. A nameplate caps nothing. A fuse counts by its rated current, a
    /// resettable fuse by its hold current, an electronic limit by the upper end of its tolerance. A conductor counts by its ampacity where
    /// its cable is warmest, and by the largest protective device that a code allows for its AWG size, whichever is less. A return
    /// conductor that several outputs share carries the current of all of them (431.2). The current at which the protective device opens
    /// for certain may be 1.45 times the ampacity (from memory); for a fuse to IEC 60127 it is 2.1 times its rating. What is not stated
    /// counts as in <see cref="ConductorOverAmpacity"/>.
    /// </remarks>
    public static Rule ProtectionAboveConductorAmpacity { get; } = new ProtectionAboveConductorAmpacityRule();

    /// <summary>The protective device of an output is rated far above what the output may carry.</summary>
    /// <remarks>It then protects the cable, perhaps, but not the terminals and tracks of the output. An overload of 1.45 times the limit
    /// does no harm (IEC 60364-4-43, 433.1, from memory). Above that it is a Caution, above twice the limit a Failure. A supply that cannot
    /// exceed that protects the output. The one output of an adapter is the adapter: see <see cref="SupplyNotProtected"/>. Outputs alike
    /// are one finding.</remarks>
    public static Rule ProtectionAboveOutputLimit { get; } = new SimpleRule("protection-above-output-limit",
        "fuse or limit too large for the output", Severity.Failure,
        "The protective device of an output is rated for more than 1.45 times what the output may carry. " +
        "An overload heats its terminals and tracks, and nothing opens.",
        "Use a protective device rated for at most the limit of the output. Or use an output with a higher limit.",
        Sources.OverloadCoordination, (rule, evidence) =>
            from alike in evidence.Faults
                .Where(o => !o.Box.IsAdapter && o.Output.Protection is not null && !FaultRuleText.IsUnprotected(o))
                .GroupBy(o => (o.Box, o.Output.Protection, o.Output.LimitAmperes))
            let output = alike.First()
            let device = output.Output.Protection!
            let rated = Math.Min((device as ElectronicLimit)?.Limit.Amperes ?? device.CarriedAmperes(currentFactor: 1),
                output.GreatestSustainedAmperes)
            let allowed = CheckConstants.CertainOpening.Value * output.Output.LimitAmperes
            where Limits.IsAbove(rated, allowed)
            let isFar = Limits.IsAbove(rated, CheckConstants.FarAboveLimit.Value * output.Output.LimitAmperes)
            select rule.Find(FaultRuleText.About([.. alike]),
                $"Its {FaultRuleText.Protection(output)} lets {Digits.Of(rated, allowed, "0.##")} A through continuously. " +
                Invariant($"The output is limited to {output.Output.LimitAmperes:0.##} A; in an overload it may carry ") +
                $"{Digits.Of(allowed, rated, "0.##")} A.{FaultRuleText.Others([.. alike])}",
                ElectricCurrent.FromAmperes(rated), ElectricCurrent.FromAmperes(allowed),
                severity: isFar ? Severity.Failure : Severity.Caution));

    /// <summary>Data is not stated that verdicts on shorts, heat in conductors or starting need: one finding for the site.</summary>
    /// <remarks>It names what to state, for which output or device, and which verdict that allows. Insulation and installation method are
    /// asked for only where a verdict depends on them.</remarks>
    public static Rule FaultsUnknown { get; } = new FaultsUnknownRule();

    // A data sheet states one current and one time; at a larger current the time is known only up to a stated largest current.
    private static string TimeOfTest(OutputFaults output, ShortCircuit fault) =>
        output.Output.Protection is ResettableFuse && fault.Missing.HasFlag(FaultData.MaximumCurrent)
            ? "That is its time at the test current; its largest current is not stated. "
            : string.Empty;

    // A current above the rating is another rule's.
    private static bool IsContinuousLoad(ProtectionInCondition condition) => condition.ShareOfRating is not null && !condition.MayTrip
        && !condition.Condition.On.HasFlag(LoadComponents.StartUp) && condition.Condition.IsContinuous;
}
