using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Mains;
using CamPower.Supplies;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <content>Rules on the circuits of the mains.</content>
public static partial class Rules
{
    /// <summary>The boxes on all receptacles of a breaker draw more than it may carry continuously.</summary>
    /// <remarks>A breaker with one receptacle that is overloaded itself is not named again.</remarks>
    public static Rule BreakerOverloaded { get; } = new SimpleRule("breaker-overloaded", "circuit breaker overloaded", Severity.Failure,
        "The boxes on the receptacles of one circuit breaker together draw more current than it may carry continuously.",
        "Spread the boxes over receptacles of other circuits. " +
        "Leave work on the circuit to a licensed electrician, and follow the local code.",
        Sources.NecReceptacle, (rule, evidence) =>
            from breaker in evidence.Breakers
            let load = breaker.Load
            where load.IsViolated || load.IsThin
            where breaker.Receptacles.Count > 1
                || !Limits.IsAbove(breaker.Worst.KnownAmperes, breaker.Receptacles[0].Receptacle.MostAmperes)
            let most = NumberOf(load.PolicyLimit!)
            select rule.Find(Subject.Of(breaker.Breaker),
                $"Its boxes draw {(breaker.Worst.IsKnown ? "" : "at least ")}{Digits.Of(breaker.Worst.KnownAmperes, most)} A " +
                $"in \"{breaker.Worst.Condition}\"; it may carry {Digits.Of(most, breaker.Worst.KnownAmperes)} A continuously.",
                load.Value, load.PolicyLimit, breaker.Worst.Condition));

    private const string SlowerBreaker = "Ask a licensed electrician about a slower breaker (type C or D). Do not change it yourself.";

    /// <summary>The supplies on a breaker, switched on together, may trip it.</summary>
    /// <remarks>A Failure where it trips for certain, a Caution inside the band for half a cycle or longer. A Note above the lower edge for
    /// less than half a cycle, or for a time that is not stated: only the maker of the breaker can tell.</remarks>
    public static Rule StartMayTripBreaker { get; } = new SimpleRule("start-may-trip-breaker", "start may trip the breaker", Severity.Note,
        "Supplies that start together on one circuit breaker may trip it.",
        "Start them one after the other, or spread them over circuits. " + SlowerBreaker,
        Sources.BreakerBands, (rule, evidence) =>
            from breaker in evidence.Breakers
            from finding in Rule.Worst(
                from start in new[] { (Inrush: breaker.Cold, How: "cold"), (Inrush: breaker.Warm, How: "warm") }
                where start.Inrush.MayTrip
                orderby start.Inrush.KnownPeakAmperes descending
                select Trips(rule, breaker, start.Inrush, start.How))
            select finding);

    /// <summary>The standing leakage of the supplies on a circuit may trip its residual-current device.</summary>
    /// <remarks>A Failure above the current at which the device must not trip.</remarks>
    public static Rule LeakageMayTripResidualDevice { get; } = new SimpleRule("leakage-may-trip-residual-device",
        "leakage may trip the residual-current device", Severity.Caution,
        "The standing leakage of the supplies on a circuit is large against the rating of its residual-current device.",
        "Spread the supplies over circuits. " +
        "Never bypass the residual-current device (RCD, GFCI) or cut the ground wire: a fault can then kill.",
        Sources.StandingLeakage, (rule, evidence) =>
            from breaker in evidence.Breakers
            let leakage = breaker.Leakage
            where leakage.IsThin || leakage.IsViolated
            let residual = breaker.Breaker.ResidualCurrent!.Value.Milliamperes
            let share = (leakage.IsViolated ? SupplyConstants.ResidualHold : SupplyConstants.StandingLeakage).Value
            let leaks = breaker.KnownLeakage.Milliamperes
            let most = residual * share / 100
            select rule.Find(Subject.Of(breaker.Breaker),
                $"Its supplies leak {(breaker.IsLeakageKnown ? "" : "at least ")}{Digits.Of(leaks, most, "0.##")} mA; " +
                $"the limit is {Digits.Of(most, leaks, "0.##")} mA. " +
                Invariant($"That is {share:0} % of the {residual:0.##} mA rating of its residual-current device (RCD, GFCI)."),
                leakage.Value, leakage.IsViolated ? leakage.Limit : leakage.PolicyLimit,
                severity: leakage.IsViolated ? Severity.Failure : null));

    /// <summary>The boxes of an uninterruptible supply take more than it is rated for.</summary>
    public static Rule UninterruptibleSupplyOverloaded { get; } = new SimpleRule("uninterruptible-supply-overloaded",
        "UPS overloaded", Severity.Failure,
        "The boxes of a UPS (uninterruptible supply) take more power, apparent power or peak current than it gives.",
        "Use a larger UPS (uninterruptible supply), or plug fewer boxes into it.",
        Sources.PowerFactor, (rule, evidence) =>
            from standby in evidence.Uninterruptible
            from finding in Rule.Worst(
                from c in standby.InConditions
                where c.IsOverloaded
                orderby c.KnownWatts descending
                let judged = new[] { (Of: c.OfPower, Unit: "W"), (Of: c.OfApparentPower, Unit: "VA"), (Of: c.OfPeak, Unit: "A of peak") }
                    .First(j => j.Of.IsViolated)
                let taken = NumberOf(judged.Of.Value!)
                let given = NumberOf(judged.Of.Limit!)
                select rule.Find(Subject.Of(standby.Supply),
                    $"Its boxes take {Digits.Of(taken, given, "0.##")} {judged.Unit} in \"{c.Condition}\"; " +
                    $"it gives {Digits.Of(given, taken, "0.##")} {judged.Unit}.",
                    judged.Of.Value, judged.Of.Limit, c.Condition))
            select finding);

    /// <summary>An uninterruptible supply does not carry its boxes as long as wanted.</summary>
    /// <remarks>A Caution where only its new battery does.</remarks>
    public static Rule UninterruptibleRuntimeTooShort { get; } = new SimpleRule("uninterruptible-runtime-too-short",
        "UPS runtime too short", Severity.Failure,
        "A UPS (uninterruptible supply) does not carry its boxes for the time wanted, or does so with a new battery only.",
        "Use a UPS (uninterruptible supply) with a longer runtime, or plug fewer boxes into it. Replace its battery in time.",
        Sources.Ieee485Aging, yieldsTo: ["uninterruptible-supply-overloaded"], check: (rule, evidence) =>
            from standby in evidence.Uninterruptible
            from finding in Rule.Worst(
                from c in standby.InConditions
                where c.Lasts.IsThin || c.Lasts.IsViolated
                orderby c.KnownWatts descending
                let minutes = ((Duration)c.Lasts.Value!).Minutes
                let wanted = ((Duration)(c.Lasts.IsViolated ? c.Lasts.Limit : c.Lasts.PolicyLimit)!).Minutes
                select rule.Find(Subject.Of(standby.Supply),
                    Invariant($"At {c.KnownWatts:0.#} W it runs {(c.Lasts.IsViolated ? "at most" : "at least")} ") +
                    $"{Digits.Of(minutes, wanted, "0.#")} min in \"{c.Condition}\"; " +
                    $"wanted {Digits.Of(wanted, minutes, "0.#")} min{(c.Lasts.IsViolated ? "" : " with a new battery")}.",
                    c.Lasts.Value, c.Lasts.IsViolated ? c.Lasts.Limit : c.Lasts.PolicyLimit, c.Condition,
                    c.Lasts.IsViolated ? null : Severity.Caution))
            select finding);

    private static Finding Trips(Rule rule, BreakerAssessment breaker, StartTogether start, string how)
    {
        CircuitBreaker device = breaker.Breaker;
        bool trips = start.Holds.IsViolated;
        double amperes = start.KnownRms.Amperes, limit = trips ? device.TripsAmperes : device.HoldsAmperes;
        bool isOneTooMany = start.MostAtOnce == 0;
        string count = isOneTooMany ? " The largest of them alone may trip it."
            : start.MostAtOnce is int most ? Invariant($" At most {most} may start at once.") : string.Empty;
        return rule.Find(Subject.Of(device),
            Invariant($"A {how} start of its {NumberOf(breaker.Boxes.Count, "supply", "supplies")} draws ") +
            Invariant($"{(start.IsKnown ? "" : "at least ")}{start.KnownPeakAmperes:0.#} A peak ") +
            $"({Digits.Of(amperes, limit, "0.#")} A RMS). " +
            $"The breaker {(trips ? "trips above" : "is certain to hold only up to")} {Digits.Of(limit, amperes, "0.#")} A RMS.{count}",
            start.KnownRms, ElectricCurrent.FromAmperes(limit),
            severity: trips ? Severity.Failure : start.LastsHalfACycle ? Severity.Caution : null,
            remedy: isOneTooMany ? $"Use supplies with a lower inrush current. {SlowerBreaker}" : null);
    }

    private static string NumberOf(int count, string one, string many) => count == 1 ? one : Invariant($"{count} {many}");
}
