using CamPower.Files.Entries;
using CamPower.Files.Formats;

namespace CamPower.Files.Writing;

/// <summary>From cables to entries.</summary>
internal static class CableWriting
{
    internal static CableEntry Entry(Cable cable, string name)
    {
        bool isPair = ReferenceEquals(cable.Outgoing, cable.Return);
        ConductorEntry outgoing = Entry(cable.Outgoing);
        return new CableEntry
        {
            Name = name,
            Size = isPair ? outgoing.Size : null,
            Stranding = isPair ? outgoing.Stranding : null,
            Material = isPair ? outgoing.Material : null,
            Out = isPair ? null : outgoing,
            Back = isPair ? null : Entry(cable.Return),
            PreTerminated = cable.IsPreTerminated ? true : null,
        };
    }

    private static ConductorEntry Entry(Conductor conductor) => new()
    {
        Size = new(conductor.Size),
        Stranding = new(conductor.Stranding),
        Material = new(conductor.Material),
    };
}
