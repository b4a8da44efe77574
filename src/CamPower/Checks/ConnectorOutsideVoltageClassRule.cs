using System.Collections.Generic;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply outside the voltage class of the connector that it is plugged into: the plug promises a voltage that is not there.</summary>
public sealed class ConnectorOutsideVoltageClassRule() : Rule("connector-outside-voltage-class", Severity.Caution,
    "The nominal voltage of the supply is outside the class that the connector of the device stands for.",
    "Use the connector of the supply's class, so that nobody plugs in what its size promises.", Sources.UnifiedBarrelPlugs)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            if (device.Device.Model.Connector?.VoltageClass is not VoltageRange promised) continue;
            double volts = device.Box.Supply.Output.NominalVolts;
            bool isAbove = Limits.IsAbove(volts, promised.HighestVolts);
            if (!isAbove && !Limits.IsBelow(volts, promised.LowestVolts)) continue;
            yield return Find(Subject.Of(device.Device),
                Invariant($"{device.Box} gives {volts:0.##} V through a connector of {promised}: {device.Device.Model.Connector}."),
                ElectricPotential.FromVolts(volts), isAbove ? promised.Highest : promised.Lowest);
        }
    }
}
