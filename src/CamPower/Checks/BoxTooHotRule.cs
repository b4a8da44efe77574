using System.Collections.Generic;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply in air that is hotter than any in which it is rated to run.</summary>
/// <remarks>It speaks for the rules of rating, headroom and split adapters, which pass over such a condition.</remarks>
public sealed class BoxTooHotRule() : Rule("box-too-hot", Severity.Failure,
    "The air around the supply of a box, inside its enclosure where it has one, is hotter than any in which the supply is rated to run.",
    "Take heat out of the box, shade it, or use a larger enclosure with more of its faces free or a supply rated for more. Do not open an outdoor enclosure to cool it.",
    Sources.GenericDerating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes)
        {
            BoxInCondition? hottest = null;
            foreach (BoxInCondition candidate in box.InConditions)
            {
                if (candidate.IsTooHot && !(candidate.SupplyCelsius <= hottest?.SupplyCelsius)) hottest = candidate;
            }

            if (hottest is null) continue;
            string where = hottest.Heat is null ? "around it" : box.Box.Cabinet is Cabinet cabinet ? $"in {cabinet}" : "in its enclosure";
            yield return Find(Subject.Of(box.Box),
                Invariant($"In \"{hottest.Condition}\" the air {where} is at {(hottest.IsInsideAtLeast ? "least " : "")}{hottest.SupplyCelsius:0.#} °C, and its supply is rated to run up to {hottest.HighestCelsius:0.#} °C."),
                Temperature.FromDegreesCelsius(hottest.SupplyCelsius), Temperature.FromDegreesCelsius(hottest.HighestCelsius), hottest.Condition);
        }
    }

    /// <summary>The condition that leaves the least of the rating of those in which the supply is neither too hot nor too cold to run; null where it always is.</summary>
    internal static BoxInCondition? WorstOfTheRest(BoxAssessment box)
    {
        if (!IsOut(box.Worst)) return box.Worst;
        BoxInCondition? worst = null;
        foreach (BoxInCondition candidate in box.InConditions)
        {
            if (!IsOut(candidate) && (worst is null || candidate.IsWorseThan(worst))) worst = candidate;
        }

        return worst;
    }

    private static bool IsOut(BoxInCondition box) => box.IsTooHot || box.IsTooCold;
}
