using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Checks;

/// <summary>A supply whose voltage, as marked and as set, is above what a device accepts: the wrong supply.</summary>
/// <remarks>It speaks for <see cref="OvervoltageAtLightLoadRule"/>, which is silent about such a supply.</remarks>
public sealed class SupplyVoltageTooHighRule() : Rule("supply-voltage-too-high", Severity.Danger,
    "The voltage of the supply, as marked and as set, is above the highest that the device accepts.",
    "Do not energise: feed the device from a supply of its own voltage.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            if (!IsTooHigh(device)) continue;
            VoltageRange accepted = device.Worst.Accepted!;
            yield return Find(Subject.Of(device.Device),
                FormattableString.Invariant($"{device.Box} gives {Volts(device):0.##} V, it accepts at most {accepted.HighestVolts:0.##} V."),
                ElectricPotential.FromVolts(Volts(device)), accepted.Highest);
        }
    }

    internal static bool IsTooHigh(DeviceAssessment device) =>
        device.Worst.Accepted is VoltageRange accepted && Limits.IsAbove(Volts(device), accepted.HighestVolts);

    // One that is only set too high is another rule's finding: it can be set lower.
    private static double Volts(DeviceAssessment device) => Math.Min(device.Box.Supply.Output.NominalVolts, device.Box.Supply.Output.SetVolts);
}
