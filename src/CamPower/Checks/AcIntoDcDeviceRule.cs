using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>Alternating current on a device that accepts direct current only: half of every cycle is reversed.</summary>
public sealed class AcIntoDcDeviceRule() : Rule("ac-into-dc-device", Severity.Danger,
    "An alternating supply feeds a device that accepts direct current only.",
    "Do not connect it: feed it from a DC supply of its own voltage.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Devices
        .Where(d => d.Box.Supply.Output is AcOutput && d.Device.Model.AcInput is null)
        .Select(d => Find(Subject.Of(d.Device), $"{d.Box} gives AC, the {d.Device.Model} accepts DC only."));
}
