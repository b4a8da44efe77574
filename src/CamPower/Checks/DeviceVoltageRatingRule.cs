using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A protective device on a higher voltage than it interrupts.</summary>
public sealed class DeviceVoltageRatingRule() : Rule("device-voltage-rating-exceeded", Severity.Danger,
    "A supply gives more than the voltage rating of the protective device at an output: it may arc instead of opening.",
    "Use a device of a higher voltage rating.", Sources.DeviceVoltageRating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
        from output in box.Outputs
        let rating = output.Output.Protection?.VoltageRating
        where rating is not null && Limits.IsAbove(box.Box.Supply.Output.HighestVolts, rating.Value.Volts)
        select Find(Subject.Of(box.Box, output.Output),
            Invariant($"Its supply gives up to {box.Box.Supply.Output.HighestVolts:0.00} V: {output.Output.Protection} interrupts at most {rating.Value.Volts:0.##} V."),
            box.Box.Supply.Output.HighestVoltage, rating);
}
