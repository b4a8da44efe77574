using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Checks;

/// <summary>A supply whose voltage, as marked and as set, is above what a device accepts: the wrong supply.</summary>
/// <remarks>One that is only set too high is not the wrong supply: it can be set lower.</remarks>
public sealed class SupplyVoltageTooHighRule() : Rule("supply-voltage-too-high", Severity.Danger,
    "The voltage of the supply, as marked and as set, is above the highest that the device accepts.",
    "Do not energize: feed the device from a supply of its own voltage.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices
        where device.OfSupply.IsViolated
        let volts = (ElectricPotential)device.OfSupply.Value!
        select Find(Subject.Of(device.Device),
            FormattableString.Invariant($"{device.Box} gives {volts.Volts:0.##} V; it accepts at most {device.Worst.Accepted!.HighestVolts:0.##} V."), volts, device.OfSupply.Limit);
}
