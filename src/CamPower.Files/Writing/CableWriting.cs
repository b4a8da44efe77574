using System;
using System.Linq;
using CamPower.Files.Entries;
using CamPower.Files.Formats;

namespace CamPower.Files.Writing;

/// <summary>From cables to entries.</summary>
internal static class CableWriting
{
    internal static CableEntry Entry(Cable cable, string name)
    {
        CableEntry entry = CableCatalog.All.FirstOrDefault(usual => IsOfOneConstruction(usual, cable)) is Cable found
            ? new CableEntry { Usual = new(found), PreTerminated = cable.IsPreTerminated == found.IsPreTerminated ? null : cable.IsPreTerminated }
            : OfConductors(cable);
        entry.Name = name;
        entry.Insulation = cable.Insulation is Insulation known ? new(known) : null;
        return entry;
    }

    private static bool IsOfOneConstruction(Cable usual, Cable cable) => usual.Outgoing == cable.Outgoing && usual.Return == cable.Return
        && usual.Coax == cable.Coax && usual.Source == cable.Source;

    private static CableEntry OfConductors(Cable cable)
    {
        if (cable.Coax is not null || cable.Source is not null)
        {
            throw new NotSupportedException($"A site file cannot express the coaxial cable or the source of '{cable}': it knows those of the usual cables.");
        }

        ConductorEntry outgoing = Entry(cable.Outgoing);
        bool isPlainPair = ReferenceEquals(cable.Outgoing, cable.Return) && outgoing.Table is null && outgoing.Wires is null;
        return new CableEntry
        {
            Size = isPlainPair ? outgoing.Size : null,
            Stranding = isPlainPair ? outgoing.Stranding : null,
            Material = isPlainPair ? outgoing.Material : null,
            Out = isPlainPair ? null : outgoing,
            Back = isPlainPair ? null : Entry(cable.Return),
            PreTerminated = cable.IsPreTerminated ? true : null,
        };
    }

    private static ConductorEntry Entry(Conductor conductor) => new()
    {
        Size = new(conductor.Size),
        Stranding = new(conductor.Stranding),
        Material = new(conductor.Material),
        Table = conductor.Basis is NominalArea ? null : new(PublishedTable.Of(conductor)),
        Wires = conductor.Count == 1 ? null : conductor.Count,
    };
}
