using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A box that feeds more cameras than it has outputs, so that some share one.</summary>
public sealed class MoreCamerasThanOutputsRule() : Rule("more-cameras-than-outputs", Severity.Caution,
    "A box feeds more cameras than it has outputs: cameras share outputs, and a fault on one takes its neighbor down.",
    "Use a box with more outputs, or a second box.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes.Where(b => !b.Box.IsAdapter))
        {
            int cameras = box.Outputs.Sum(o => o.Devices.Count(d => d.Model.Kind == DeviceKind.Camera));
            if (cameras <= box.Box.Outputs.Count) continue;
            yield return Find(Subject.Of(box.Box), Invariant($"It feeds {cameras} cameras from {box.Box.Outputs.Count} outputs."),
                Scalar.FromAmount(cameras), Scalar.FromAmount(box.Box.Outputs.Count));
        }
    }
}
