using System.Collections.Generic;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply in air that is hotter than any in which it is rated to run.</summary>
/// <remarks>It speaks for <see cref="SupplyAboveDeratedRatingRule"/>, which is silent about such a condition.</remarks>
public sealed class BoxTooHotRule() : Rule("box-too-hot", Severity.Failure,
    "The air around the supply of a box, inside its enclosure where it has one, is hotter than any in which the supply is rated to run.",
    "Take heat out of the box, shade it, or use a larger enclosure with more of its faces free or a supply rated for more. Do not open an outdoor enclosure to cool it.",
    Sources.GenericDerating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(SiteAssessment assessment)
    {
        double altitude = Require.NotNull(assessment, nameof(assessment)).Site.AltitudeMeters;
        foreach (BoxAssessment box in assessment.Boxes)
        {
            double highest = Highest(box, altitude);
            BoxInCondition? hottest = null;
            foreach (BoxInCondition candidate in box.InConditions)
            {
                if (IsTooHot(candidate, highest) && !(candidate.SupplyCelsius <= hottest?.SupplyCelsius)) hottest = candidate;
            }

            if (hottest is null) continue;
            string where = hottest.Heat is null ? "around it" : "in its enclosure";
            yield return Find(Subject.Of(box.Box),
                Invariant($"In \"{hottest.Condition}\" the air {where} is at {hottest.SupplyCelsius:0.#} °C, and its supply is rated to run up to {highest:0.#} °C."),
                Temperature.FromDegreesCelsius(hottest.SupplyCelsius), Temperature.FromDegreesCelsius(highest), hottest.Condition);
        }
    }

    /// <summary>Whether a box is too hot in a condition.</summary>
    internal static bool IsTooHot(BoxAssessment box, BoxInCondition condition, double altitudeMeters) => IsTooHot(condition, Highest(box, altitudeMeters));

    private static bool IsTooHot(BoxInCondition condition, double highest) => condition.Amperes > 0 && condition.SupplyCelsius > highest;

    private static double Highest(BoxAssessment box, double altitudeMeters) => box.Box.Supply.Derating.HighestCelsiusAt(altitudeMeters);
}
