using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Checks;

/// <summary>A supply whose voltage, as marked and as set, is above what a device accepts: the wrong supply.</summary>
/// <remarks>One that is only set too high is not the wrong supply: it can be set lower.</remarks>
public sealed class SupplyVoltageTooHighRule() : Rule("supply-voltage-too-high", Severity.Danger,
    "The voltage of the supply, as marked and as set, is above the highest that the device accepts.",
    "Do not energize: feed the device from a supply of its own voltage.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            double volts = Math.Min(device.Box.Supply.Output.NominalVolts, device.Box.Supply.Output.SetVolts);
            if (device.Worst.Accepted is not VoltageRange accepted || !Limits.IsAbove(volts, accepted.HighestVolts)) continue;
            yield return Find(Subject.Of(device.Device),
                FormattableString.Invariant($"{device.Box} gives {volts:0.##} V; it accepts at most {accepted.HighestVolts:0.##} V."),
                ElectricPotential.FromVolts(volts), accepted.Highest);
        }
    }
}
