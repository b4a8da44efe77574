using CamPower.Files.Entries;

namespace CamPower.Files.Building;

/// <summary>From entries to cables.</summary>
internal static class CableBuilding
{
    internal static Cable Build(CableEntry entry, Place at)
    {
        string name = at.Name("name", entry.Name);
        bool preTerminated = at.Value("preTerminated", entry.PreTerminated, false);
        bool isPair = entry.Out is null && entry.Back is null;
        return isPair
            ? PairOf(Build(new ConductorEntry { Size = entry.Size, Stranding = entry.Stranding, Material = entry.Material }, at))
            : new Cable(Build(entry.Out ?? new(), at.Member("out")), Build(entry.Back ?? new(), at.Member("back")), preTerminated, name);

        Cable PairOf(Conductor conductor) => new(conductor, conductor, preTerminated, name);
    }

    private static Conductor Build(ConductorEntry entry, Place at) => at.Build(() => new Conductor(
        at.Value("size", entry.Size, StandIn.Cable.Outgoing.Size),
        at.Value("stranding", entry.Stranding, StandIn.Cable.Outgoing.Stranding),
        at.Value("material", entry.Material, StandIn.Cable.Outgoing.Material)));
}
