using System;
using System.Collections.Generic;

namespace CamPower.Checks;

/// <summary>Ampacities of conductors, each worked out once: most runs of a site are of a cable that lies alike elsewhere.</summary>
/// <param name="capacityOf">Works one out.</param>
internal sealed class KnownCapacities(Func<SiteRun, Cable, Conductor, ConductorCapacity?> capacityOf)
{
    private readonly Dictionary<(InstallationMethod?, Cable, Conductor), ConductorCapacity?> _known = [];

    internal ConductorCapacity? Of(SiteRun run, Cable cable, Conductor conductor)
    {
        (InstallationMethod?, Cable, Conductor) alike = (run.InstallationMethod, cable, conductor);
        if (!_known.TryGetValue(alike, out ConductorCapacity? capacity)) _known.Add(alike, capacity = capacityOf(run, cable, conductor));
        return capacity;
    }
}
