using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>A recorder fed from an output that is meant for a camera.</summary>
public sealed class RecorderOnCameraOutputRule() : Rule("recorder-on-camera-output", Severity.Caution,
    "A recorder is fed from an output of a camera box: its start-up current and its disks are no camera's load, and it ties the returns together.",
    "Feed the recorder from a supply of its own.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Devices
        .Where(d => d.Device.Model.Kind == DeviceKind.Recorder && !d.Box.IsAdapter)
        .Select(d => Find(Subject.Of(d.Device), $"The recorder is fed from {Subject.Of(d.Box, d.Output)}."));
}
