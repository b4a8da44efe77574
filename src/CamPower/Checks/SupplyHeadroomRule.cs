using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply that is inside its derated rating, but loaded beyond a policy of headroom.</summary>
public sealed class SupplyHeadroomRule : Rule
{
    private readonly double _share;

    /// <summary>The rule with the common 80 % of the derated rating.</summary>
    public SupplyHeadroomRule()
        : this(Ratio.FromPercent(CheckConstants.Headroom.Value))
    {
    }

    /// <summary>The rule with a policy of your own.</summary>
    /// <param name="share">Share of the derated rating, above 0 and at most 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="share"/> is outside that range.</exception>
    public SupplyHeadroomRule(Ratio share)
        : base("supply-above-headroom-policy", Severity.Caution,
            "The total of a box is inside the derated rating of its supply, but above the headroom policy.",
            "Use the next stronger supply, or spread the load.", CheckConstants.Headroom.Source)
    {
        _share = Require.Positive(Require.Within(share.DecimalFractions, 0, 1, nameof(share), ""), nameof(share), "");
        Limit = share;
    }

    /// <inheritdoc/>
    public override IQuantity? Limit { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackFor => ["supply-above-derated-rating", "split-adapter-beyond-rating"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackInConditionsOf => ["receptacle-voltage-outside-supply-range", "box-too-hot", "box-too-cold", "thin-heat-margin"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        Ratio share = Ratio.FromDecimalFractions(_share);
        return Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
            .SelectMany(box => Worst(box.InConditions.Select(c => (Solved: c, Load: c.Load(share))).Where(x => x.Load.IsThin || x.Load.IsViolated)
                .OrderByDescending(x => x.Solved.Amperes / x.Solved.DeratedAmperes).ThenByDescending(x => x.Solved.Amperes).Select(x => Found(box.Box, x.Solved, x.Load))));
    }

    // Of a calculated temperature the rating that a quarter more of its rise leaves may be the smaller one.
    private Finding Found(DistributionBox box, BoxInCondition worst, Judgment load)
    {
        double policy = ((ElectricCurrent)load.PolicyLimit!).Amperes;
        string why = Limits.IsBelow(policy, worst.DeratedAmperes * _share) ? Invariant($"what {worst.UncertainKelvins:0.0#} K more leave of") : Invariant($"{_share * 100:0.#} % of");
        return Find(Subject.Of(box), Invariant($"Its outputs take {worst.Amperes:0.00} A in \"{worst.Condition}\"; policy maximum {policy:0.00} A: {why} {worst.DeratedAmperes:0.00} A."),
            load.Value, load.PolicyLimit, worst.Condition);
    }
}
