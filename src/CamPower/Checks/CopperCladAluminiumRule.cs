using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>Copper-clad aluminium in use where the eye sees copper.</summary>
public sealed class CopperCladAluminiumRule() : Rule("copper-clad-aluminium", Severity.Caution,
    "A run is of copper-clad aluminium: 55 to 59 % more resistive than copper of the same gauge, and weaker at terminals.",
    "Use copper; where it stays, check that the terminals are rated for it and measure the loop.", Sources.CopperCladAluminium)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        Alike.In(Require.NotNull(evidence, nameof(evidence)).Assessment.Site, evidence.Assessment.Site.Runs.Where(IsClad).Select(Subject.Of),
            "runs", "holds copper-clad aluminium", "hold copper-clad aluminium").Select(found => Find(found.About, found.Message));

    private static bool IsClad(SiteRun run) => run.Run.Segments.Any(s => s.Cable.Outgoing.Material.IsCopperCladAluminium || s.Cable.Return.Material.IsCopperCladAluminium);
}
