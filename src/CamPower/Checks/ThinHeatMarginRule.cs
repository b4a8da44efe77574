using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply in an enclosure that is worked out to be inside the range of the supply, but by less than the model is good for.</summary>
internal sealed class ThinHeatMarginRule() : Rule("thin-heat-margin", Severity.Caution,
    "The air in an enclosure is cooler than the hottest in which its supply is rated to run, but by less than the model of the heat is good for.",
    "Measure the temperature inside on a hot day, take heat out of the box, or use a larger enclosure.", Sources.EnclosureHeatBalance)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackFor => ["box-too-hot"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
        .SelectMany(box => Worst(box.InConditions.Where(c => c.HottestAir.IsThin || (c.HottestAir.IsViolated && c.UncertainKelvins > 0))
            .OrderByDescending(c => c.SupplyCelsius + c.UncertainKelvins).Select(c => Found(box.Box, c))));

    private Finding Found(DistributionBox box, BoxInCondition thin) => Find(Subject.Of(box),
        Invariant($"The air {BoxTooHotRule.Where(box, thin)} is at {thin.SupplyCelsius:0.0#} °C in \"{thin.Condition}\"; policy maximum {thin.HighestCelsius - thin.UncertainKelvins:0.0#} °C: {thin.HighestCelsius:0.#} °C − {thin.UncertainKelvins:0.0#} K."),
        thin.HottestAir.Value, thin.HottestAir.PolicyLimit, thin.Condition);
}
