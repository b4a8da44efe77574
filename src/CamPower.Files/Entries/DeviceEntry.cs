using System.ComponentModel;
using System.Text.Json.Serialization;

namespace CamPower.Files.Entries;

internal sealed class DeviceEntry
{
    [JsonRequired, Description("How it is called on the site.")]
    public string? Name { get; set; }

    [JsonRequired, Description("Name of its model.")]
    public string? Model { get; set; }

    [JsonRequired, Description("Name of the junction that it is connected to.")]
    public string? At { get; set; }

    [Description("True where its leads were seen or measured to be reversed.")]
    public bool? LeadsReversed { get; set; }
}
