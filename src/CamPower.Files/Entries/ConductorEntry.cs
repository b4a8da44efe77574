using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;

namespace CamPower.Files.Entries;

internal sealed class ConductorEntry
{
    [JsonRequired]
    public Written<WireSize>? Size { get; set; }

    [JsonRequired, Description("How the metal is made up.")]
    public Written<Stranding>? Stranding { get; set; }

    [JsonRequired, Description("What the conductor is made of.")]
    public Written<ConductorMaterial>? Material { get; set; }
}
