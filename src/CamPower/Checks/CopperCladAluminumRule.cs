using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>Copper-clad aluminum in use where the eye sees copper.</summary>
public sealed class CopperCladAluminumRule() : Rule("copper-clad-aluminum", Severity.Caution,
    "A run is of copper-clad aluminum: 55 to 59 % more resistive than copper of the same gauge, and weaker at terminals.",
    "Use copper; where it stays, check that the terminals are rated for it and measure the loop.", Sources.CopperCladAluminum)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        Alike.In(Require.NotNull(evidence, nameof(evidence)).Assessment.Site, evidence.Assessment.Site.Runs.Where(IsClad).Select(Subject.Of),
            "runs", "holds copper-clad aluminum", "hold copper-clad aluminum").Select(found => Find(found.About, found.Message));

    private static bool IsClad(SiteRun run) => run.Run.Segments.Any(s => s.Cable.Outgoing.Material.IsCopperCladAluminum || s.Cable.Return.Material.IsCopperCladAluminum);
}
