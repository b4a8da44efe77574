using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>Direct current on a device that accepts alternating current only.</summary>
public sealed class DcIntoAcDeviceRule() : Rule("dc-into-ac-device", Severity.Failure,
    "A DC supply feeds a device that accepts alternating current only.",
    "Feed it from an AC supply of its own voltage.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Devices
        .Where(d => d.Box.Supply.Output is DcOutput && d.Device.Model.DcInput is null)
        .Select(d => Find(Subject.Of(d.Device), $"{d.Box} gives DC, the {d.Device.Model} accepts AC only."));
}
