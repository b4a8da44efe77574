using System.ComponentModel;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

/// <summary>A wall of an enclosure in full, or the name of one of the library.</summary>
internal sealed class WallEntry : IHasTextForm
{
    [JsonRequired, Description("How the wall is called.")]
    public string? Name { get; set; }

    [JsonRequired, Description("Share of a black body's heat radiation that its surface gives off.")]
    public Written<Ratio>? Emissivity { get; set; }

    [JsonRequired, Description("Share of the sunlight on it that its surface takes up.")]
    public Written<Ratio>? SolarAbsorptance { get; set; }

    [Description("Thermal resistance of the sheet itself; left out for metal.")]
    public Written<ThermalResistance>? ThermalResistance { get; set; }

    string IHasTextForm.TextDescription => Words.Wall.Description;

    JsonObject IHasTextForm.TextSchema => Words.Wall.Schema;

    /// <summary>The wall of the library, or null where the members say it.</summary>
    internal EnclosureWall? Named { get; set; }

    void IHasTextForm.ReadText(string text) => Named = Words.Wall.Parse(text);

    string? IHasTextForm.WriteText() => Named is null ? null : Words.Wall.Format(Named);
}
