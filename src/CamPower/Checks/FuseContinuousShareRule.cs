using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Protection;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A fuse that carries its current, but more of its rating for hours than practice allows.</summary>
/// <remarks>Fuses to UL 248-14 and blade fuses, which are tested closed at 1.1 times their rating. One whose characteristic has it closed at 1.5 times for an hour, as IEC 60127
/// does, is rated by what it carries, and nothing is said of it.</remarks>
public sealed class FuseContinuousShareRule : Rule
{
    private readonly double _share;

    /// <summary>The rule with the common 75 % of the rating.</summary>
    public FuseContinuousShareRule()
        : this(Ratio.FromPercent(ProtectionConstants.FuseContinuousShare.Value))
    {
    }

    /// <summary>The rule with a share of your own.</summary>
    /// <param name="share">Share of the rated current, re-rated for the temperature of the box, above 0 and at most 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="share"/> is outside that range.</exception>
    public FuseContinuousShareRule(Ratio share)
        : base("fuse-above-continuous-share", Severity.Caution,
            "A fuse is loaded for hours with more of its rating than practice allows; a start-up, and a condition that is declared to last less than 3 h, do not count.",
            "Use the next larger fuse that the cable allows.",
            ProtectionConstants.FuseContinuousShare.Source)
    {
        _share = Require.Positive(Require.Within(share.DecimalFractions, 0, 1, nameof(share), ""), nameof(share), "");
        Limit = share;
    }

    /// <inheritdoc/>
    public override IQuantity? Limit { get; }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs
        where output.Output.Protection is Fuse { Characteristic.CarriesItsRating: false }
        let worst = output.InConditions.Where(IsContinuous).OrderByDescending(c => c.ShareOfRating!.Value.DecimalFractions).FirstOrDefault()
        where worst is not null && Limits.IsAbove(worst.ShareOfRating!.Value.DecimalFractions, _share)
        let allowed = _share * worst.Carried!.Value
        select Find(Subject.Of(output.Box, output.Output),
            Invariant($"In \"{worst.Condition}\" it takes {worst.Current.Amperes:0.00} A: more than {_share * 100:0.#} % of the {worst.Carried!.Value.Amperes:0.00} A of {output.Output.Protection}."),
            worst.Current, allowed, worst.Condition);

    // A current above the rating is another rule's.
    private static bool IsContinuous(ProtectionInCondition condition) => condition.ShareOfRating is not null && !condition.MayTrip
        && !condition.Condition.On.HasFlag(LoadComponents.StartUp)
        && condition.Condition.IsContinuous;
}
