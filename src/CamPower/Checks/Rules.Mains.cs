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
    /// <summary>The supplies on a breaker, switched on together, may trip it.</summary>
    /// <remarks>A Failure where it trips for certain.</remarks>
    public static Rule StartMayTripBreaker { get; } = new SimpleRule("start-may-trip-breaker", Severity.Caution,
        "Supplies that start together on one circuit breaker may trip it.",
        "Start them one after the other, or spread them over circuits. " +
        "Ask a licensed electrician for a breaker with a higher band; do not change one yourself.",
        Sources.BreakerBands, (rule, evidence) =>
            from breaker in evidence.Breakers
            from finding in Rule.Worst(
                from start in new[] { (breaker.Cold, How: "cold"), (breaker.Warm, How: "warm") }
                where start.Item1.MayTrip
                orderby start.Item1.KnownPeakAmperes descending
                select Trips(rule, breaker, start.Item1, start.How))
            select finding);

    /// <summary>The standing leakage of the supplies on a circuit may trip its residual-current device.</summary>
    /// <remarks>A Failure above the current at which the device must not trip.</remarks>
    public static Rule LeakageMayTripResidualDevice { get; } = new SimpleRule("leakage-may-trip-residual-device", Severity.Caution,
        "The standing leakage of the supplies on a circuit is large against the rating of its residual-current device.",
        "Spread the supplies over circuits. Never remove the device or the protective conductor: without them a fault kills.",
        Sources.StandingLeakage, (rule, evidence) =>
            from breaker in evidence.Breakers
            let leakage = breaker.Leakage
            where leakage.IsThin || leakage.IsViolated
            let residual = breaker.Breaker.ResidualCurrent!.Value.Milliamperes
            let share = (leakage.IsViolated ? SupplyConstants.ResidualHold : SupplyConstants.StandingLeakage).Value
            select rule.Find(Subject.Of(breaker.Breaker),
                Invariant($"Its supplies leak {(breaker.IsLeakageKnown ? "" : "at least ")}{breaker.KnownLeakage.Milliamperes:0.##} mA; ") +
                Invariant($"at most {residual * share / 100:0.##} mA, ") +
                Invariant($"{share:0} % of the {residual:0.##} mA of the residual-current device."),
                leakage.Value, leakage.IsViolated ? leakage.Limit : leakage.PolicyLimit,
                severity: leakage.IsViolated ? Severity.Failure : null));

    private static Finding Trips(Rule rule, BreakerAssessment breaker, StartTogether start, string how)
    {
        CircuitBreaker device = breaker.Breaker;
        bool trips = start.Holds.IsViolated;
        string count = start.MostAtOnce is int most ? Invariant($" At most {most} may start at once.") : string.Empty;
        return rule.Find(Subject.Of(device),
            Invariant($"A {how} start of its {NumberOf(breaker.Boxes.Count, "supply", "supplies")} peaks at ") +
            Invariant($"{(start.IsKnown ? "" : "at least ")}{start.KnownPeakAmperes:0.#} A, a sine of {start.KnownRms.Amperes:0.#} A; ") +
            Invariant($"it {(trips ? "trips above" : "holds up to")} {(trips ? device.TripsAmperes : device.HoldsAmperes):0.#} A.{count}"),
            start.KnownRms, ElectricCurrent.FromAmperes(trips ? device.TripsAmperes : device.HoldsAmperes),
            severity: trips ? Severity.Failure : null);
    }

    private static string NumberOf(int count, string one, string many) => count == 1 ? one : Invariant($"{count} {many}");
}
