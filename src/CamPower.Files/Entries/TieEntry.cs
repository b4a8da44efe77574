using System.ComponentModel;
using System.Text.Json.Serialization;

namespace CamPower.Files.Entries;

internal sealed class TieEntry
{
    [JsonRequired, Description("One of the outputs.")]
    public OutputNameEntry? One { get; set; }

    [JsonRequired, Description("The output that it is joined to.")]
    public OutputNameEntry? Other { get; set; }
}
