using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Checks;

/// <summary>A supply whose nominal voltage alone is above what a device accepts: the wrong supply.</summary>
public sealed class SupplyVoltageTooHighRule() : Rule("supply-voltage-too-high", Severity.Danger,
    "The nominal voltage of the supply is above the highest that the device accepts.",
    "Do not energise: feed the device from a supply of its own voltage.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(SiteAssessment assessment)
    {
        foreach (DeviceAssessment device in Require.NotNull(assessment, nameof(assessment)).Devices)
        {
            if (!IsTooHigh(device)) continue;
            VoltageRange accepted = device.Worst.Accepted!;
            yield return Find(Subject.Of(device.Device),
                FormattableString.Invariant($"{device.Box} gives {device.Box.Supply.NominalVolts:0.##} V, it accepts at most {accepted.HighestVolts:0.##} V."),
                device.Box.Supply.Nominal, accepted.Highest);
        }
    }

    internal static bool IsTooHigh(DeviceAssessment device) =>
        device.Worst.Accepted is VoltageRange accepted && device.Box.Supply.NominalVolts > accepted.HighestVolts;
}
