using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A box colder than its supply is rated to run in.</summary>
internal sealed class BoxTooColdRule() : Rule("box-too-cold", Severity.Failure,
    "The air around the supply of a box, inside its enclosure where it has one, is colder than any in which the supply is rated to run.",
    "Use a supply that is rated for such cold, or put the box where it is warmer.", Sources.GenericDerating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
        .SelectMany(box => Worst(box.InConditions.Where(c => c.ColdestAir.IsViolated).OrderBy(c => c.SupplyCelsius).Select(c => Found(box.Box, c))));

    private Finding Found(DistributionBox box, BoxInCondition cold) => Find(Subject.Of(box),
        Invariant($"The air {BoxTooHotRule.Where(box, cold)} is at {cold.SupplyCelsius:0.#} °C in \"{cold.Condition}\"; its supply is rated to run from {cold.LowestCelsius:0.#} °C."),
        cold.ColdestAir.Value, cold.ColdestAir.Limit, cold.Condition);
}
