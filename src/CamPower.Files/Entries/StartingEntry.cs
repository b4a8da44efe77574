using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class StartingEntry
{
    [JsonRequired, Description("Rising terminal voltage at which it starts.")]
    public Written<ElectricPotential>? TurnOn { get; set; }

    [JsonRequired, Description("Falling terminal voltage at which it stops.")]
    public Written<ElectricPotential>? DropOut { get; set; }

    [JsonRequired, Description("Whether the draw ramps up.")]
    public Written<SoftStart>? SoftStart { get; set; }
}
