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
    public sealed override IReadOnlyList<string> StandsBackInConditionsOf => ["no-operating-point"];

    /// <inheritdoc/>
    public sealed override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Devices
        .SelectMany(device => Worst(device.InConditions.Where(c => c.Start == _reason).Select(Found)));

    private Finding Found(DeviceInCondition device)
    {
        (double measured, double limit) = Compared(device, device.Device.Model.Starting!);
        return Find(Subject.Of(device.Device), Message(device.Condition, measured, limit), measured > 0 ? ElectricPotential.FromVolts(measured) : null,
            ElectricPotential.FromVolts(limit), device.Condition);
    }

    /// <summary>The voltage found, 0 where there is none, and the one that it is held against. [V]</summary>
    private protected abstract (double Measured, double Limit) Compared(DeviceInCondition device, Starting starting);

    private protected abstract string Message(Condition condition, double measured, double limit);
}
