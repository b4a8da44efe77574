using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>An alternating supply, which is solved more roughly than a direct one.</summary>
public sealed class AcSolvedWithRmsRule() : Rule("ac-solved-with-rms", Severity.Note,
    "An alternating supply is solved with RMS magnitudes at unity power factor.",
    "Leave room: a rectifier input charges at the crest, and the crest falls more than the RMS value.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        Alike.In(Require.NotNull(evidence, nameof(evidence)).Assessment.Site, evidence.Assessment.Boxes.Where(FeedsAcDevices).Select(b => Subject.Of(b.Box)), "boxes",
            "has AC runs, solved with RMS values at unity power factor; rectifier inputs get less", "have AC runs, solved with RMS values; rectifier inputs get less")
            .Select(found => Find(found.About, found.Message));

    private static bool FeedsAcDevices(BoxAssessment box) => box.Box.Supply.Output is AcOutput && box.Outputs.Any(o => o.Devices.Any(d => d.Model.AcInput is not null));
}
