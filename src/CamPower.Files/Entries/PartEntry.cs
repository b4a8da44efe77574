using System.ComponentModel;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

[Form("cable", "length")]
[Form("joint", "resistance")]
[Form("usualJoint")]
internal sealed class PartEntry
{
    [Description("Name of the cable.")]
    public string? Cable { get; set; }

    [Description("Length along the route, one way.")]
    public Written<Length>? Length { get; set; }

    [Description("What the joint or connector is.")]
    public string? Joint { get; set; }

    [Description("Resistance that the joint adds to the loop, both poles together.")]
    public Written<ElectricResistance>? Resistance { get; set; }

    [Description("A joint from the catalogue of the library, with its usual resistance.")]
    public Written<Joint>? UsualJoint { get; set; }
}
