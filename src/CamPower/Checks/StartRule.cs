using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Checks;

/// <summary>A device that does not start for one of the three reasons; each reason is a rule of its own.</summary>
public abstract class StartRule : Rule
{
    private readonly StartVerdict _reason;

    private protected StartRule(string id, StartVerdict reason, string purpose, string remedy)
        : base(id, Severity.Failure, purpose, remedy, Sources.Kirchhoff) => _reason = reason;

    /// <inheritdoc/>
    public sealed override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            // Without an operating point there is no voltage to speak of: that is another rule's finding.
            DeviceInCondition? first = device.InConditions.FirstOrDefault(c => c.Start == _reason && c.SolvedVoltage is not null);
            if (first is null) continue;
            (double measured, double limit) = Compared(first, device.Device.Model.Starting!);
            yield return Find(Subject.Of(device.Device), Message(first.Condition, measured, limit),
                ElectricPotential.FromVolts(measured), ElectricPotential.FromVolts(limit), first.Condition);
        }
    }

    /// <summary>The voltage found and the one that it is held against. [V]</summary>
    private protected abstract (double Measured, double Limit) Compared(DeviceInCondition device, Starting starting);

    private protected abstract string Message(Condition condition, double measured, double limit);
}
