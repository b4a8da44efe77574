using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class EnclosureEntry
{
    [JsonRequired, Description("Outside width.")]
    public Written<Length>? Width { get; set; }

    [JsonRequired, Description("Outside height.")]
    public Written<Length>? Height { get; set; }

    [JsonRequired, Description("Outside depth.")]
    public Written<Length>? Depth { get; set; }

    [JsonRequired, Description("What it is made of: the name of a wall, or the wall in full.")]
    public WallEntry? Wall { get; set; }

    [JsonRequired, Description("The faces that still air can reach: how it is mounted, or a list of faces.")]
    public FacesEntry? FreeFaces { get; set; }

    [Description("How much of it the sun strikes, measured square to the light; left out in the shade.")]
    public Written<Area>? SunlitArea { get; set; }

    [Description("Heat of what else runs in it beside the supply and the devices of its outputs.")]
    public Written<Power>? OtherHeat { get; set; }

    [Description("Whether it has vents or a fan.")]
    public bool? Ventilated { get; set; }
}
