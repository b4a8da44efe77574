using CamPower.Files.Entries;

namespace CamPower.Files.Building;

/// <summary>From entries to cables.</summary>
internal static class CableBuilding
{
    internal static Cable Build(CableEntry entry, Place at)
    {
        string name = at.Name("name", entry.Name);
        if (entry.Usual is not null) return Usual(entry, at, name);
        bool preTerminated = at.Value("preTerminated", entry.PreTerminated, false);
        bool isPair = entry.Out is null && entry.Back is null;
        return isPair
            ? PairOf(Build(new ConductorEntry { Size = entry.Size, Stranding = entry.Stranding, Material = entry.Material }, at))
            : CableOf(Build(entry.Out ?? new(), at.Member("out")), Build(entry.Back ?? new(), at.Member("back")));

        Cable PairOf(Conductor conductor) => CableOf(conductor, conductor);

        Cable CableOf(Conductor outgoing, Conductor back) =>
            new(outgoing, back, preTerminated, name, entry.Insulation?.Value);
    }

    // What the entry states itself stands in place of what the catalogue says.
    private static Cable Usual(CableEntry entry, Place at, string name)
    {
        Cable usual = at.Value("usual", entry.Usual, StandIn.Cable);
        return new Cable(usual.Outgoing, usual.Return, at.Value("preTerminated", entry.PreTerminated, usual.IsPreTerminated), name,
            entry.Insulation?.Value ?? usual.Insulation, usual.Coax, usual.Source);
    }

    private static Conductor Build(ConductorEntry entry, Place at)
    {
        Conductor nominal = at.Build(() => new Conductor(
            at.Value("size", entry.Size, StandIn.Cable.Outgoing.Size),
            at.Value("stranding", entry.Stranding, StandIn.Cable.Outgoing.Stranding),
            at.Value("material", entry.Material, StandIn.Cable.Outgoing.Material)));
        Conductor wire = entry.Table is null || at.IsFaulty ? nominal : at.Build(() => entry.Table.Value.LookUp(nominal.Size, nominal.Stranding, nominal.Material), nominal);
        return at.Build(() => wire.InParallel(at.Value("wires", entry.Wires, 1)));
    }
}
