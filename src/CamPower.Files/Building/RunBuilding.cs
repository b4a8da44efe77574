using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Building;

/// <summary>From entries to runs.</summary>
internal static class RunBuilding
{
    internal static SiteRun Build(RunEntry entry, Place at, Catalog<Cable> cables) => new(
        Build(entry.From ?? new(), at.Member("from")),
        at.Name("to", entry.To),
        Build(entry.Parts, at.Member("parts"), cables),
        entry.ReturnAt is null ? null : at.Name("returnAt", entry.ReturnAt),
        entry.Laying?.Value);

    // Where the junction is missing, an output of a box of no name stands in: nothing follows from it.
    private static RunOrigin Build(OriginEntry entry, Place at) => entry.Junction is not null
        ? RunOrigin.Junction(at.Name("junction", entry.Junction))
        : at.Build(() => RunOrigin.Output(at.Name("box", entry.Box), at.Value("output", entry.Output, 1)));

    private static CableRun Build(IReadOnlyList<PartEntry?>? entries, Place at, Catalog<Cable> cables)
    {
        RunPart[] parts = [.. (entries ?? []).Select((part, i) => Build(part ?? new(), at.Item(i), cables))];
        return at.BuildHere(() => at.IsFaulty || entries is null ? new CableRun(StandIn.Cable, Length.Zero) : new CableRun(parts));
    }

    private static RunPart Build(PartEntry entry, Place at, Catalog<Cable> cables)
    {
        if (entry.UsualJoint is not null) return at.Value("usualJoint", entry.UsualJoint, StandIn.Joint);
        Cable cable = cables.Find(entry.Cable, at.Member("cable"));
        return entry.Joint is null && entry.Resistance is null
            ? at.Build(() => new CableSegment(cable, at.Value("length", entry.Length, Length.Zero)))
            : at.Build(() => new Joint(at.Name("joint", entry.Joint), at.Value("resistance", entry.Resistance, ElectricResistance.Zero)));
    }
}
