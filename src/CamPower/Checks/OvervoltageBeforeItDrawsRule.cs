using System.Collections.Generic;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device that sees more than it accepts until it draws something: at power-up, or while it is off.</summary>
public sealed class OvervoltageBeforeItDrawsRule() : Rule("overvoltage-before-it-draws", Severity.Caution,
    "Before it draws anything the device sees more than it accepts: the cable takes the excess only while it runs.",
    "Set the supply lower and use a thicker conductor instead, or make sure that the device stands this voltage while it is off.", Sources.Kirchhoff)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackFor => ["supply-voltage-too-high", "overvoltage-at-light-load"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            if (!device.BeforeItDraws.IsViolated) continue;
            yield return Find(Subject.Of(device.Device),
                Invariant($"It may see {device.NoLoadVoltage.Volts:0.00} V before it draws anything; it accepts at most {device.Worst.Accepted!.HighestVolts:0.##} V."),
                device.BeforeItDraws.Value, device.BeforeItDraws.Limit);
        }
    }
}
