using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>A cable that came with its connectors on, extended with another.</summary>
public sealed class PreTerminatedCableExtendedRule() : Rule("pre-terminated-cable-extended", Severity.Caution,
    "A pre-terminated cable is extended with another: its thin conductors and the extra connectors are in series with the rest.",
    "Use one length of cable from the box to the device, sized for the whole way.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        SiteAssessment assessment = Require.NotNull(evidence, nameof(evidence)).Assessment;
        var reported = new HashSet<SiteRun>();
        foreach (IReadOnlyList<SiteRun> path in assessment.Devices.Select(d => d.Path))
        {
            if (path.Sum(run => run.Run.Segments.Count()) < 2) continue;
            foreach (SiteRun run in path.Where(run => run.Run.Segments.Any(s => s.Cable.IsPreTerminated) && reported.Add(run)))
            {
                yield return Find(Subject.Of(run), $"The pre-terminated cable on the way from {run.From} to {run.To} is joined to another.");
            }
        }
    }
}
