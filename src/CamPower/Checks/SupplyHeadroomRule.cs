using System;
using System.Collections.Generic;
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
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes)
        {
            BoxInCondition? worst = BoxTooHotRule.WorstOfTheRest(box);
            if (worst is null) continue;
            double policy = worst.DeratedAmperes * _share;
            if (!Limits.IsAbove(worst.Amperes, policy) || Limits.IsAbove(worst.Amperes, worst.DeratedAmperes)) continue;
            yield return Find(Subject.Of(box.Box),
                Invariant($"In \"{worst.Condition}\" its outputs take {worst.Amperes:0.00} A: more than {_share * 100:0.#} % of the {worst.DeratedAmperes:0.00} A that its supply may deliver."),
                worst.TotalCurrent, ElectricCurrent.FromAmperes(policy), worst.Condition);
        }
    }
}
