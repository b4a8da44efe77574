using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class AltitudeDeratingEntry
{
    [JsonRequired, Description("The height up to which nothing changes.")]
    public Written<Length>? Above { get; set; }

    [JsonRequired, Description("By how much warmer the air counts for every 1000 m above that.")]
    public Written<TemperatureDelta>? PerThousandMetres { get; set; }
}
