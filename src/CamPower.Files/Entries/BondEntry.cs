using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class BondEntry
{
    [JsonRequired, Description("Name of a ground where shields meet.")]
    public string? Ground { get; set; }

    [JsonRequired, Description("Name of the box to whose negative it is connected.")]
    public string? Box { get; set; }

    [JsonRequired, Description("Resistance between the two.")]
    public Written<ElectricResistance>? Resistance { get; set; }
}
