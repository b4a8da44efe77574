using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply in air that is hotter than any in which it is rated to run.</summary>
public sealed class BoxTooHotRule() : Rule("box-too-hot", Severity.Failure,
    "The air around the supply of a box, inside its enclosure where it has one, is hotter than any in which the supply is rated to run.",
    "Take heat out of the box, shade it, or use a larger enclosure with more of its faces free or a supply rated for more. Do not open an outdoor enclosure to cool it.",
    Sources.GenericDerating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
        .SelectMany(box => Worst(box.InConditions.Where(c => c.HottestAir.IsViolated).OrderByDescending(c => c.SupplyCelsius).Select(c => Found(box.Box, c))));

    /// <summary>Where the air is that derates a supply, after "the air".</summary>
    internal static string Where(DistributionBox box, BoxInCondition inCondition) =>
        inCondition.Heat is null ? "around it" : box.Cabinet is Cabinet cabinet ? $"in {cabinet}" : "in its enclosure";

    private Finding Found(DistributionBox box, BoxInCondition hot) => Find(Subject.Of(box),
        Invariant($"The air {Where(box, hot)} is at {(hot.IsInsideAtLeast ? "least " : "")}{hot.SupplyCelsius:0.#} °C in \"{hot.Condition}\"; its supply is rated to run up to {hot.HighestCelsius:0.#} °C."),
        hot.HottestAir.Value, hot.HottestAir.Limit, hot.Condition);
}
