using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>An alternating supply, which is solved more roughly than a direct one.</summary>
public sealed class AcSolvedWithRmsRule() : Rule("ac-solved-with-rms", Severity.Note,
    "An alternating supply is solved with RMS magnitudes at unity power factor.",
    "Leave room: a rectifier input charges at the crest, and the crest falls more than the RMS value.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
        .Where(b => b.Box.Supply.Output is AcOutput && b.Outputs.Any(o => o.Devices.Any(d => d.Model.AcInput is not null)))
        .Select(b => Find(Subject.Of(b.Box), "Its AC runs are solved with RMS magnitudes at unity power factor; rectifier inputs will see less."));
}
