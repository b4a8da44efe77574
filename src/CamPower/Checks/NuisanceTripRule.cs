using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A protective device that may open under the current of a condition, at the temperature of its box.</summary>
public sealed class NuisanceTripRule() : Rule("nuisance-trip", Severity.Failure,
    "In some condition an output takes more than its protective device carries for good at the temperature of the box.",
    "Use a device that carries the current there, cool the box, or spread the load.", Sources.DeviceCarriesItsRating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs
        where output.Output.Protection is not null
        let worst = output.InConditions.Where(c => c.MayTrip).OrderByDescending(c => c.Current.Amperes / c.Carried!.Value.Amperes).FirstOrDefault()
        where worst is not null
        select Find(Subject.Of(output.Box, output.Output),
            Invariant($"In \"{worst.Condition}\" it takes {worst.Current.Amperes:0.00} A: {output.Output.Protection} carries {worst.Carried!.Value.Amperes:0.00} A there, and {worst.Opening}."),
            worst.Current, worst.Carried, worst.Condition);
}
