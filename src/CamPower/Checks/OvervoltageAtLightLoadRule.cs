using System.Collections.Generic;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device that sees more than it accepts when little is drawn and the cable is cold.</summary>
public sealed class OvervoltageAtLightLoadRule() : Rule("overvoltage-at-light-load", Severity.Danger,
    "At the highest supply voltage and the least load the device sees more than it accepts.",
    "Do not energize: set the supply lower; if the far devices then get too little, give them thicker conductors or a supply of their own.", Sources.Kirchhoff)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackFor => ["supply-voltage-too-high"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            if (!device.AtLightLoad.IsViolated) continue;
            yield return Find(Subject.Of(device.Device),
                Invariant($"It may see {device.LightLoadVolts:0.00} V at light load; it accepts at most {device.Worst.Accepted!.HighestVolts:0.##} V."),
                device.AtLightLoad.Value, device.AtLightLoad.Limit);
        }
    }
}
