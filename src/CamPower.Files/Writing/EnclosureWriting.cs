using System.Linq;
using CamPower.Files.Entries;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Writing;

/// <summary>From enclosures to entries.</summary>
internal static class EnclosureWriting
{
    internal static EnclosureEntry Entry(Enclosure enclosure) => new()
    {
        Width = new(enclosure.Width),
        Height = new(enclosure.Height),
        Depth = new(enclosure.Depth),
        Wall = Entry(enclosure.Wall),
        FreeFaces = Entry(enclosure.FreeFaces),
        SunlitArea = enclosure.SunlitArea is Area area ? new(area) : null,
        OtherHeat = enclosure.OtherHeat is Power heat ? new(heat) : null,
        Ventilated = enclosure.IsVentilated ? true : null,
    };

    private static WallEntry Entry(EnclosureWall wall) => Words.Wall.Knows(wall)
        ? new() { Named = wall }
        : new()
        {
            Name = wall.Name,
            Emissivity = new(wall.Emissivity),
            SolarAbsorptance = new(wall.SolarAbsorptance),
            ThermalResistance = wall.Resistance is ThermalResistance resistance ? new(resistance) : null,
        };

    private static FacesEntry Entry(EnclosureFaces free)
    {
        if (Words.Mounting.Knows(free)) return new FacesEntry { Named = free };
        var entry = new FacesEntry();
        entry.AddRange(Words.Face.Values.Where(face => free.HasFlag(face)).Select(face => new Written<EnclosureFaces>(face)));
        return entry;
    }
}
