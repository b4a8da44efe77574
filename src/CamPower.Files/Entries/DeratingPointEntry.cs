using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class DeratingPointEntry
{
    [JsonRequired, Description("Temperature of the air around the supply.")]
    public Written<Temperature>? Ambient { get; set; }

    [JsonRequired, Description("Share of the rated current that is left.")]
    public Written<Ratio>? Share { get; set; }
}
