using System.Collections.Generic;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device that is up, but under the lowest voltage that it accepts.</summary>
public sealed class UndervoltageRule() : Rule("undervoltage", Severity.Failure,
    "In some condition the voltage at the device is under the lowest that it accepts.",
    "Use a thicker or shorter conductor, or, if the supply can be trimmed, set it higher within every device's range.", Sources.Kirchhoff)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            if (LowestUp(device) is not DeviceInCondition lowest || !IsUnder(lowest)) continue;
            yield return Find(Subject.Of(device.Device),
                Invariant($"In \"{lowest.Condition}\" it gets {lowest.UpVolts:0.00} V and needs at least {lowest.Accepted!.LowestVolts:0.##} V."),
                lowest.Voltage, lowest.Accepted.Lowest, lowest.Condition);
        }
    }

    /// <summary>Whether a device that is up gets less than it accepts.</summary>
    internal static bool IsUnder(DeviceInCondition device) => Limits.IsBelow(device.UpVolts, device.Accepted!.LowestVolts);

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
