using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>A model used outside the range in which it was held against other figures.</summary>
public sealed class ValueOutsideValidatedRangeRule() : Rule("value-outside-validated-range", Severity.Caution,
    "The temperature inside an enclosure was worked out from a value outside the range in which the model was held against other figures.",
    "Take the answer as a rough one, and measure on site.", Sources.EnclosureRange)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
        from breaches in BreachesOf(box).GroupBy(b => b.Breach.What, StringComparer.Ordinal)
        let first = breaches.First()
        let isEverywhere = breaches.Count() == box.InConditions.Count
        select Find(Subject.Of(box.Box), $"{first.Breach}.", first.Breach.Value, first.Breach.Limit, isEverywhere ? null : first.Condition);

    private static IEnumerable<(Condition Condition, ValidityBreach Breach)> BreachesOf(BoxAssessment box) =>
        from inCondition in box.InConditions
        where inCondition.Heat is not null
        from breach in inCondition.Heat!.Breaches
        select (inCondition.Condition, breach);
}
