using System;
using System.Linq;
using CamPower.Files.Formats;

namespace CamPower.Files.Parts;

/// <summary>Cables and their conductors.</summary>
internal static class CableFormats
{
    private const string StrandingText = "How the metal is made up.";

    private static readonly ObjectFormat<Conductor> Conductor = new(o =>
    {
        var size = o.Required("size", "Its size.", Quantities.WireSize, c => c.Size);
        var stranding = o.Required("stranding", StrandingText, Words.Stranding, c => c.Stranding);
        var material = o.Required("material", "What the conductor is made of.", Words.Material, c => c.Material);
        var table = o.Optional("table", "The table that states the resistance, where it does not follow from the nominal area.",
            Words.Table, c => c.Basis is TabulatedResistance ? PublishedTable.Of(c) : null);
        var wires = o.Optional("wires", "How many such wires in parallel the pole has; 1 where it is left out.", Quantities.Count,
            c => c.Count == 1 ? null : c.Count).Parameter("count");
        return at =>
        {
            Conductor nominal = new(size[at], stranding[at], material[at]);
            bool isTabulated = table[at] is not null && !at.HasError;
            Conductor wire = isTabulated ? table[at]!.LookUp(nominal.Size, nominal.Stranding, nominal.Material) : nominal;
            return wire.InParallel(wires[at] ?? 1);
        };
    });

    private static readonly ObjectFormat<Cable> Cable = new(o =>
    {
        var name = o.Required("name", "The name by which runs refer to it.", Words.Name, c => c.Name!);
        var size = o.OfForm("size", "The size of both conductors.", Quantities.WireSize, c => PairOf(c)?.Size);
        var stranding = o.OfForm("stranding", StrandingText, Words.Stranding, c => PairOf(c)?.Stranding);
        var material = o.OfForm("material", "What the conductors are made of.", Words.Material, c => PairOf(c)?.Material);
        var outgoing = o.OfForm("out", "The conductor from the supply to the load, where the two differ.", Conductor,
            c => IsInFull(c) ? c.Outgoing : null);
        var back = o.OfForm("back", "The conductor from the load back to the supply, where the two differ.", Conductor,
            c => IsInFull(c) ? c.Return : null);
        var usual = o.OfForm("usual", "A construction that the trade uses, from the catalog of the library.", Words.UsualCable, UsualOf);
        var insulation = o.Optional("insulation", "The insulation of the conductors, or the temperature that is printed on it.",
            Words.Insulation, c => c.Insulation);
        var preTerminated = o.Optional("preTerminated", "Whether it comes with its connectors on and may be neither cut nor extended.",
            Words.YesNo, c => c.IsPreTerminated == (UsualOf(c)?.IsPreTerminated ?? false) ? null : c.IsPreTerminated);
        o.OneOf(new Form(size, stranding, material), new Form(outgoing, back), new Form(usual));
        return at =>
        {
            // What the file states itself replaces what the catalog says.
            if (usual.IsGiven(at)) return With(usual[at], name[at], preTerminated[at], insulation[at]);
            bool isInFull = outgoing.IsGiven(at) || back.IsGiven(at);
            Conductor alike = isInFull ? outgoing[at] : new Conductor(size[at], stranding[at], material[at]);
            return new Cable(alike, isInFull ? back[at] : alike, preTerminated[at] ?? false, name[at], insulation[at]);
        };
    });

    /// <summary>The cables that runs are made of.</summary>
    internal static PartList<Cable> Cables { get; } = new("cable", Cable, c => string.IsNullOrWhiteSpace(c.Name) ? null : c.Name)
    {
        Rename = (cable, name) => With(cable, name, null, null),
    };

    private static Cable With(Cable cable, string name, bool? isPreTerminated, Insulation? insulation) => new(
        cable.Outgoing, cable.Return, isPreTerminated ?? cable.IsPreTerminated, name, insulation ?? cable.Insulation,
        cable.Coax, cable.Source);

    private static Cable? UsualOf(Cable cable)
    {
        Cable? usual = CableCatalog.All.FirstOrDefault(u =>
            u.Outgoing == cable.Outgoing && u.Return == cable.Return && u.Coax == cable.Coax && u.Source == cable.Source);
        return usual is not null || (cable.Coax is null && cable.Source is null)
            ? usual
            : throw new NotSupportedException(
                $"A site file cannot express the coaxial cable or the source of '{cable}': it knows those of the usual cables.");
    }

    // Two conductors that one size, stranding and material describe.
    private static Conductor? PairOf(Cable cable)
    {
        bool isPair = ReferenceEquals(cable.Outgoing, cable.Return) && cable.Outgoing is { Basis: not TabulatedResistance, Count: 1 };
        return isPair && UsualOf(cable) is null ? cable.Outgoing : null;
    }

    private static bool IsInFull(Cable cable) => UsualOf(cable) is null && PairOf(cable) is null;
}
