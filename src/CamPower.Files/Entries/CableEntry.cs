using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;

namespace CamPower.Files.Entries;

[Form("size", "stranding", "material")]
[Form("out", "back")]
[Form("usual")]
internal sealed class CableEntry
{
    [JsonRequired, Description("The name by which runs refer to it.")]
    public string? Name { get; set; }

    public Written<WireSize>? Size { get; set; }

    [Description("How the metal is made up.")]
    public Written<Stranding>? Stranding { get; set; }

    [Description("What the conductors are made of.")]
    public Written<ConductorMaterial>? Material { get; set; }

    [Description("The conductor from the supply to the load, where the two differ.")]
    public ConductorEntry? Out { get; set; }

    [Description("The conductor from the load back to the supply, where the two differ.")]
    public ConductorEntry? Back { get; set; }

    [Description("A construction that the trade uses, from the catalogue of the library.")]
    public Written<Cable>? Usual { get; set; }

    [Description("The insulation of the conductors, or the temperature that is printed on it.")]
    public Written<Insulation>? Insulation { get; set; }

    [Description("Whether it comes with its connectors on and may be neither cut nor extended.")]
    public bool? PreTerminated { get; set; }
}
