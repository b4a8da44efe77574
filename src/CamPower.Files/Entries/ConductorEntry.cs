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

    [Description("The table that states the resistance, where it does not follow from the nominal area.")]
    public Written<PublishedTable>? Table { get; set; }

    [Description("How many such wires in parallel the pole has; 1 where it is left out.")]
    public int? Wires { get; set; }
}
