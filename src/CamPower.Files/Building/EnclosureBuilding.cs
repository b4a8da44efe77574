using System.Linq;
using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Building;

/// <summary>From entries to enclosures.</summary>
internal static class EnclosureBuilding
{
    internal static Enclosure Build(EnclosureEntry entry, Place at)
    {
        EnclosureWall wall = Build(entry.Wall, at.Member("wall"));
        EnclosureFaces free = Build(entry.FreeFaces, at.Member("freeFaces"));
        return at.Build(() => new Enclosure(
            at.Value("width", entry.Width, StandIn.LongSide),
            at.Value("height", entry.Height, StandIn.LongSide),
            at.Value("depth", entry.Depth, StandIn.LongSide),
            wall, free,
            at.Optional("sunlitArea", entry.SunlitArea),
            at.Optional("otherHeat", entry.OtherHeat),
            entry.Ventilated == true));
    }

    private static EnclosureWall Build(WallEntry? entry, Place at)
    {
        if (entry is null || entry.Named is not null) return entry?.Named ?? EnclosureWall.PaintedSteel;
        return at.Build(() => new EnclosureWall(at.Name("name", entry.Name),
            at.Value("emissivity", entry.Emissivity, StandIn.Share),
            at.Value("solarAbsorptance", entry.SolarAbsorptance, StandIn.Share),
            at.Optional("thermalResistance", entry.ThermalResistance)), standIn: null, ("resistance", "thermalResistance"));
    }

    private static EnclosureFaces Build(FacesEntry? entry, Place at)
    {
        if (entry is null || entry.Named is not null) return entry?.Named ?? EnclosureFaces.FreeInAir;
        EnclosureFaces free = entry.Aggregate(EnclosureFaces.None, (sum, face) => sum | (face?.Value ?? EnclosureFaces.FreeInAir));
        if (free != EnclosureFaces.None) return free;
        if (!at.IsFaulty) at.Fault("an enclosure needs at least one free face");
        return EnclosureFaces.FreeInAir;
    }
}
