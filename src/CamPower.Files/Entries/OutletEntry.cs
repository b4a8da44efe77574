using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class OutletEntry
{
    [JsonRequired, Description("The name by which boxes refer to it.")]
    public string? Name { get; set; }

    [JsonRequired, Description("The nominal voltage of the line; RMS.")]
    public Written<ElectricPotential>? Voltage { get; set; }

    [JsonRequired, Description("The current that it is rated for.")]
    public Written<ElectricCurrent>? Rating { get; set; }

    [Description("The share of its rating that may be plugged in for good; left out for 80 %.")]
    public Written<Ratio>? Share { get; set; }
}
