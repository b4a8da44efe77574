using System.Collections.Generic;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device that sees more than it accepts until it draws something: at power-up, or while it is off.</summary>
/// <remarks>Where it sees too much even while it runs, <see cref="OvervoltageAtLightLoadRule"/> and
/// <see cref="SupplyVoltageTooHighRule"/> speak instead.</remarks>
public sealed class OvervoltageBeforeItDrawsRule() : Rule("overvoltage-before-it-draws", Severity.Caution,
    "Before it draws anything the device sees more than it accepts: the cable takes the excess only while it runs.",
    "Set the supply lower and use a thicker conductor instead, or make sure that the device stands this voltage while it is off.", Sources.Kirchhoff)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            if (device.Worst.Accepted is not VoltageRange accepted || SupplyVoltageTooHighRule.IsTooHigh(device)) continue;
            double volts = device.Box.Supply.Output.HighestVolts;
            if (!Limits.IsAbove(volts, accepted.HighestVolts) || Limits.IsAbove(device.LightLoadVolts, accepted.HighestVolts)) continue;
            yield return Find(Subject.Of(device.Device),
                Invariant($"Before it draws anything it may see {volts:0.00} V and accepts at most {accepted.HighestVolts:0.##} V."),
                device.NoLoadVoltage, accepted.Highest);
        }
    }
}
