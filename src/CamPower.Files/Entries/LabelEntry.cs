using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class LabelEntry
{
    [JsonRequired]
    public Written<ElectricPotential>? Voltage { get; set; }

    [JsonRequired]
    public Written<ElectricCurrent>? Current { get; set; }

    [JsonRequired, Description("What stands behind the input terminals.")]
    public Written<InputStage>? Stage { get; set; }
}
