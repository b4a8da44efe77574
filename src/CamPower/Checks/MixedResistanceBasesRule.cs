using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>A run whose resistances are nominal in one part and a table's figure in another.</summary>
public sealed class MixedResistanceBasesRule() : Rule("mixed-resistance-bases", Severity.Note,
    "A run mixes nominal resistances with figures of a table: its sum is neither what a meter should read nor the most to fear.",
    "Describe the whole run on one basis: nominal to know what to measure, a standard's maximum to be sure.", Sources.Resistance)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        Alike.In(Require.NotNull(evidence, nameof(evidence)).Assessment.Site, evidence.Assessment.Site.Runs.Where(run => run.Run.MixesResistanceBases).Select(Subject.Of),
            "runs", "mixes nominal and tabulated resistances", "mix nominal and tabulated resistances").Select(found => Find(found.About, found.Message));
}
