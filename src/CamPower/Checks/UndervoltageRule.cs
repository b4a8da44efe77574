using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device that is up, but under the lowest voltage that it accepts.</summary>
public sealed class UndervoltageRule() : Rule("undervoltage", Severity.Failure,
    "In some condition the voltage at the device is under the lowest that it accepts.",
    "Use a thicker or shorter conductor, or, if the supply can be trimmed, set it higher within every device's range.", Sources.Kirchhoff)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices
        let lowest = LowestUp(device)
        where lowest?.LowestVoltage(Ratio.Zero).IsViolated == true
        select Find(Subject.Of(device.Device),
            Invariant($"It gets {lowest.UpVolts:0.00} V in \"{lowest.Condition}\"; it needs at least {lowest.Accepted!.LowestVolts:0.##} V."),
            lowest.Voltage, lowest.Accepted.Lowest, lowest.Condition);

    /// <summary>The condition with the lowest voltage among those in which the device is up, or null.</summary>
    internal static DeviceInCondition? LowestUp(DeviceAssessment device)
    {
        DeviceInCondition? lowest = null;
        foreach (DeviceInCondition candidate in device.InConditions)
        {
            if (candidate.State == DeviceState.Up && (lowest is null || candidate.IsWorseThan(lowest))) lowest = candidate;
        }

        return lowest;
    }
}
