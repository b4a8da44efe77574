using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class VoltageRangeEntry
{
    [JsonRequired]
    public Written<ElectricPotential>? Lowest { get; set; }

    [JsonRequired]
    public Written<ElectricPotential>? Highest { get; set; }
}
