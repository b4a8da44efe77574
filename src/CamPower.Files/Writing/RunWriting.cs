using System;
using System.Linq;
using CamPower.Files.Entries;

namespace CamPower.Files.Writing;

/// <summary>From runs to entries.</summary>
internal static class RunWriting
{
    internal static RunEntry Entry(SiteRun run, NamedEntries<Cable, CableEntry> cables) => new()
    {
        From = Entry(run.From),
        To = run.To,
        ReturnAt = run.ReturnAt,
        Laying = run.Laying is Laying laying ? new(laying) : null,
        Parts = [.. run.Run.Parts.Select(part => Entry(part, cables))],
    };

    private static OriginEntry Entry(RunOrigin origin) => origin.JunctionName is string junction
        ? new OriginEntry { Junction = junction }
        : new OriginEntry { Box = origin.BoxName, Output = origin.OutputNumber };

    // A run part is a length of cable or a joint; nothing else can be one.
    private static PartEntry Entry(RunPart part, NamedEntries<Cable, CableEntry> cables) => part is CableSegment segment
        ? new PartEntry { Cable = cables.NameOf(segment.Cable), Length = new(segment.OneWayLength) }
        : Entry((Joint)part);

    private static PartEntry Entry(Joint joint)
    {
        if (JointCatalog.All.Contains(joint)) return new PartEntry { UsualJoint = new(joint) };
        return joint.Source is null
            ? new PartEntry { Joint = joint.Name, Resistance = new(joint.LoopResistance) }
            : throw new NotSupportedException($"A site file cannot express the source '{joint.Source}' of the joint '{joint.Name}'.");
    }
}
