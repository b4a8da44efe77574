using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Formats;

namespace CamPower.Files.Parts;

/// <summary>Enclosures and cabinets.</summary>
internal static class EnclosureFormats
{
    private static readonly Format<EnclosureWall> Wall = new NamedOrFullFormat<EnclosureWall>(
        Words.Wall, new ObjectFormat<EnclosureWall>(o =>
    {
        var name = o.Required("name", "Name of the wall.", Words.Name, w => w.Name);
        var emissivity = o.Required("emissivity", "Share of a black body's heat radiation that its surface gives off.", Quantities.Share,
            w => w.Emissivity);
        var absorptance = o.Required("solarAbsorptance", "Share of the sunlight on it that its surface takes up.", Quantities.Share,
            w => w.SolarAbsorptance);
        var resistance = o.Optional("thermalResistance", "Thermal resistance of the sheet itself; left out for metal.",
            Quantities.Insulance, w => w.Resistance).Parameter("resistance");
        return at => new EnclosureWall(name[at], emissivity[at], absorptance[at], resistance[at]);
    }));

    private static readonly Format<EnclosureFaces> FreeFaces = new NamedOrFullFormat<EnclosureFaces>(
        Words.Mounting,
        new MadeFormat<IReadOnlyList<EnclosureFaces>, EnclosureFaces>(
            new ListFormat<EnclosureFaces>(Words.Face, "an enclosure needs at least one free face"),
            faces => faces.Aggregate(EnclosureFaces.None, (sum, face) => sum | face),
            free => [.. Words.Face.Values.Where(face => free.HasFlag(face))]));

    /// <summary>An enclosure.</summary>
    internal static ObjectFormat<Enclosure> Enclosure { get; } = new(o =>
    {
        var width = o.Required("width", "Outside width.", Quantities.Length, e => e.Width).Else(StandIn.LongSide);
        var height = o.Required("height", "Outside height.", Quantities.Length, e => e.Height).Else(StandIn.LongSide);
        var depth = o.Required("depth", "Outside depth.", Quantities.Length, e => e.Depth).Else(StandIn.LongSide);
        var wall = o.Required("wall", "What it is made of: the name of a wall, or the wall in full.", Wall, e => e.Wall);
        var freeFaces = o.Required("freeFaces", "The faces that still air can reach: how it is mounted, or a list of faces.", FreeFaces,
            e => e.FreeFaces);
        var sunlitArea = o.Optional("sunlitArea", "How much of it the sun strikes, measured square to the light; left out in the shade.",
            Quantities.Area, e => e.SunlitArea);
        var otherHeat = o.Optional("otherHeat", "Heat of what else runs in it beside the supply and the devices of its outputs.",
            Quantities.Power, e => e.OtherHeat);
        var ventilated = o.Optional("ventilated", "Whether it has vents or a fan.", Words.YesNo, e => e.IsVentilated ? true : null);
        return at => new Enclosure(
            width[at], height[at], depth[at], wall[at], freeFaces[at], sunlitArea[at], otherHeat[at], ventilated[at] ?? false);
    });

    /// <summary>The cabinets that several boxes share.</summary>
    internal static PartList<Cabinet> Cabinets { get; } = new("cabinet", CabinetFormat(), c => c.Name) { MayBeLeftOut = true };

    private static ObjectFormat<Cabinet> CabinetFormat() => new(o =>
    {
        var name = o.Required("name", "The name by which the boxes in it refer to it.", Words.Name, c => c.Name);
        var enclosure = o.Required("enclosure", "The case.", Enclosure, c => c.Enclosure);
        return at => new Cabinet(name[at], enclosure[at]);
    });
}
