using System.Collections.Generic;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device that draws more through its connector than the connector is rated for.</summary>
public sealed class ConnectorOverloadedRule() : Rule("connector-overloaded", Severity.Failure,
    "A device draws more current than its connector is rated for: the contact heats, loses its spring and heats more.",
    "Use a connector that is rated for the current, such as a screw terminal, at both ends.", Sources.ConnectorRating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            if (device.Device.Model.Connector?.RatedAmperes is not double rated) continue;
            DeviceInCondition most = MostDrawn(device);
            if (!Limits.IsAbove(most.AmperesDrawn, rated)) continue;
            yield return Find(Subject.Of(device.Device),
                Invariant($"In \"{most.Condition}\" it draws {most.AmperesDrawn:0.00} A through its {device.Device.Model.Connector}, which is rated for {rated:0.##} A."),
                ElectricCurrent.FromAmperes(most.AmperesDrawn), ElectricCurrent.FromAmperes(rated), most.Condition);
        }
    }

    private static DeviceInCondition MostDrawn(DeviceAssessment device)
    {
        DeviceInCondition most = device.InConditions[0];
        foreach (DeviceInCondition candidate in device.InConditions)
        {
            if (candidate.AmperesDrawn > most.AmperesDrawn) most = candidate;
        }

        return most;
    }
}
