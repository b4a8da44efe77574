using System.ComponentModel;
using System.Text.Json.Serialization;

namespace CamPower.Files.Entries;

internal sealed class CabinetEntry
{
    [JsonRequired, Description("The name by which the boxes in it refer to it.")]
    public string? Name { get; set; }

    [JsonRequired, Description("The case.")]
    public EnclosureEntry? Enclosure { get; set; }
}
