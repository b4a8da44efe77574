using System.Collections.Generic;
using System.Linq;
using UnitsNet;
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
        let judged = output.Output.Protection?.JudgeVoltage(box.Box.Supply.Output.HighestVolts, box.Box.Supply.Output.Kind == CurrentKind.Dc)
        where judged is { IsViolated: true }
        let rating = (ElectricPotential)judged.Value.Limit!
        select Find(Subject.Of(box.Box, output.Output),
            Invariant($"Its supply gives up to {box.Box.Supply.Output.HighestVolts:0.00} V: {output.Output.Protection} interrupts at most {rating.Volts:0.##} V."),
            judged.Value.Value, rating);
}
