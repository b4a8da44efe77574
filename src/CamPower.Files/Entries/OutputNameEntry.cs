using System.ComponentModel;
using System.Text.Json.Serialization;

namespace CamPower.Files.Entries;

internal sealed class OutputNameEntry
{
    [JsonRequired, Description("Name of the box.")]
    public string? Box { get; set; }

    [JsonRequired, Description("Number of the output, from 1.")]
    public int? Output { get; set; }
}
