using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Mains;

/// <summary>A circuit breaker with the supplies on its receptacles: their load, their start together, and their leakage.</summary>
/// <remarks>Immutable. Of load, leakage and inrush only the boxes of the site count. The circuit is for a licensed electrician and the
/// local code.</remarks>
/// <example>
/// <code>
/// foreach (BreakerAssessment breaker in site.Assess().StudyBreakers()) Console.WriteLine(breaker);
/// </code>
/// </example>
public sealed class BreakerAssessment
{
    private BreakerAssessment(CircuitBreaker breaker, IReadOnlyList<ReceptacleAssessment> receptacles)
    {
        Breaker = breaker;
        Boxes = Array.AsReadOnly([.. receptacles.SelectMany(r => r.InConditions[0].Draws).Select(d => d.Box)]);
        Receptacles = receptacles;
        InConditions = Array.AsReadOnly([.. receptacles[0].InConditions.Select((c, i) => new ReceptacleInCondition(
            c.Condition, c.LineVoltage.Volts, Array.AsReadOnly([.. receptacles.SelectMany(r => r.InConditions[i].Draws)])))]);
        Worst = ReceptacleInCondition.WorstOf(InConditions);
        SupplyInput?[] inputs = [.. Boxes.Select(b => b.Supply.Input)];
        Cold = new StartTogether(breaker, "cold", Array.ConvertAll(inputs, i => i?.InrushCurrent?.Amperes),
            Array.ConvertAll(inputs, i => i?.InrushIntegral?.AmpereSquaredSeconds));
        Warm = new StartTogether(breaker, "warm", Array.ConvertAll(inputs, i => i?.WarmInrushCurrent?.Amperes),
            Array.ConvertAll(inputs, _ => (double?)null));
        KnownLeakageAmperes = inputs.Sum(i => i?.LeakageCurrent?.Amperes ?? 0);
        IsLeakageKnown = Array.TrueForAll(inputs, i => i?.LeakageCurrent is not null);
    }

    /// <summary>The breaker.</summary>
    public CircuitBreaker Breaker { get; }

    /// <summary>The boxes on its receptacles, one receptacle after the other.</summary>
    public IReadOnlyList<DistributionBox> Boxes { get; }

    /// <summary>Together on it in each condition, in the site's order.</summary>
    public IReadOnlyList<ReceptacleInCondition> InConditions { get; }

    /// <summary>All of them switched on after a long outage, their inrush limiters cold.</summary>
    public StartTogether Cold { get; }

    /// <summary>All of them switched on again after a short outage, their inrush limiters still warm.</summary>
    public StartTogether Warm { get; }

    /// <summary>The standing leakage of those whose leakage is stated, as if it were in phase. [A, RMS]</summary>
    public ElectricCurrent KnownLeakage => ElectricCurrent.FromAmperes(KnownLeakageAmperes);

    /// <summary>The standing leakage against the current at which the residual-current device must not trip; policy: 30 % of its rated
    /// residual operating current. A judgment of nothing where no such device is stated.</summary>
    /// <remarks>Sources: <see cref="Sources.ResidualCurrent"/> and <see cref="Sources.StandingLeakage"/>.</remarks>
    public Judgment Leakage
    {
        get
        {
            if (Breaker.ResidualCurrent is not ElectricCurrent residual) return default;
            double holds = residual.Amperes * SupplyConstants.ResidualHold.Value / 100,
                policy = residual.Amperes * SupplyConstants.StandingLeakage.Value / 100;
            return IsLeakageKnown || Limits.IsAbove(KnownLeakageAmperes, policy)
                ? Judgment.AtMost(KnownLeakageAmperes, holds, policy, a => ElectricCurrent.FromAmperes(a))
                : Judgment.Unknown("leakage current of the supply");
        }
    }

    /// <summary>The condition of the largest known current.</summary>
    internal ReceptacleInCondition Worst { get; }

    /// <summary>The known current in the worst condition against its rating; policy: the share of it that its receptacles may carry, the
    /// smallest of theirs.</summary>
    /// <remarks>Source: <see cref="Sources.NecReceptacle"/>.</remarks>
    public Judgment Load => Judgment.AtMost(Worst.KnownAmperes, Breaker.RatedAmperes,
        Breaker.RatedAmperes * Receptacles.Min(r => r.Receptacle.Share.DecimalFractions), a => ElectricCurrent.FromAmperes(a));

    internal IReadOnlyList<ReceptacleAssessment> Receptacles { get; }

    internal bool IsLeakageKnown { get; }

    private double KnownLeakageAmperes { get; }

    /// <summary>Every breaker that a receptacle states, in the order of the receptacles.</summary>
    internal static IReadOnlyList<BreakerAssessment> Of(IReadOnlyList<ReceptacleAssessment> receptacles) => Array.AsReadOnly(
        [.. receptacles.Where(r => r.Receptacle.Breaker is not null).GroupBy(r => r.Receptacle.Breaker!)
            .Select(together => new BreakerAssessment(together.Key, [.. together]))]);

    /// <summary>The breaker, both starts and the leakage in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Breaker}: {Cold}; {Warm}; leakage {(IsLeakageKnown ? "" : "at least ")}{KnownLeakageAmperes * 1000:0.##} mA");
}
