using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Checks;

/// <summary>A run that cannot carry what its devices ask for at any voltage.</summary>
public sealed class NoOperatingPointRule() : Rule("no-operating-point", Severity.Failure,
    "The cable cannot carry the power asked of it at any voltage.",
    "Use a thicker or shorter conductor, a higher supply voltage, or less load on the run.", Sources.MaximumPower)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            DeviceInCondition? without = device.InConditions.FirstOrDefault(c => c.State != DeviceState.WrongCurrent && c.SolvedVoltage is null);
            if (without is null) continue;
            yield return Find(Subject.Of(device.Device), Message(without), without.MostPower is null ? null : without.Load.PowerShare,
                without.MostPower, without.Condition);
        }
    }

    private static string Message(DeviceInCondition device) => device.MostPower is Power most
        ? FormattableString.Invariant($"In \"{device.Condition}\" it asks for {device.Load}, and from this supply its run carries at most {(double)most.Watts:0.##} W of constant power.")
        : FormattableString.Invariant($"In \"{device.Condition}\" it asks for {device.Load}, and its run cannot carry that with all that hangs on it.");
}
