using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>A run that cannot carry what its devices ask for at any voltage.</summary>
public sealed class NoOperatingPointRule() : Rule("no-operating-point", Severity.Failure,
    "The cable cannot carry the power asked of it at any voltage.",
    "Use a thicker or shorter conductor, a higher supply voltage, or less load on the run.", Sources.MaximumPower)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(SiteAssessment assessment)
    {
        foreach (DeviceAssessment device in Require.NotNull(assessment, nameof(assessment)).Devices)
        {
            DeviceInCondition? without = device.InConditions.FirstOrDefault(c => c.State != DeviceState.WrongCurrent && c.SolvedVoltage is null);
            if (without is null) continue;
            yield return Find(Subject.Of(device.Device),
                FormattableString.Invariant($"In \"{without.Condition}\" the run to it has no operating point with {without.Load}."),
                condition: without.Condition);
        }
    }
}
