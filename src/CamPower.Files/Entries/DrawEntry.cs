using System.ComponentModel;
using System.Text.Json.Serialization;

namespace CamPower.Files.Entries;

internal sealed class DrawEntry
{
    [JsonRequired, Description("What it always draws.")]
    public ShareEntry? Base { get; set; }

    [Description("What the illuminators add.")]
    public ShareEntry? Infrared { get; set; }

    [Description("What the motors add while they move.")]
    public ShareEntry? Motor { get; set; }

    [Description("What the heater adds.")]
    public ShareEntry? Heater { get; set; }

    [Description("What it draws above the base while it starts.")]
    public ShareEntry? StartUp { get; set; }
}
