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
    public override IReadOnlyList<string> StandsBackInConditionsOf => ["box-too-hot"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
        .SelectMany(box => Worst(box.InConditions.Where(c => Limits.IsAbove(c.Amperes, c.DeratedAmperes * _share))
            .OrderByDescending(c => c.Amperes / c.DeratedAmperes).ThenByDescending(c => c.Amperes).Select(c => Found(box.Box, c))));

    private Finding Found(DistributionBox box, BoxInCondition worst) => Find(Subject.Of(box),
        Invariant($"Its outputs take {worst.Amperes:0.00} A in \"{worst.Condition}\"; policy maximum {worst.DeratedAmperes * _share:0.00} A: {_share * 100:0.#} % of {worst.DeratedAmperes:0.00} A."),
        worst.TotalCurrent, ElectricCurrent.FromAmperes(worst.DeratedAmperes * _share), worst.Condition);
}
