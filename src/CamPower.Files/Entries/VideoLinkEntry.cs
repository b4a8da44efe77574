using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class VideoLinkEntry
{
    [JsonRequired, Description("Name of the device whose power negative and video ground are one.")]
    public string? Device { get; set; }

    [JsonRequired, Description("Name of the ground where its shield meets others: the recorder's, say.")]
    public string? Ground { get; set; }

    [JsonRequired, Description("Resistance of the shield from end to end, connectors included.")]
    public Written<ElectricResistance>? ShieldResistance { get; set; }
}
