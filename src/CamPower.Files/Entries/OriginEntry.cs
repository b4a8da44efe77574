using System.ComponentModel;

namespace CamPower.Files.Entries;

[Form("box", "output")]
[Form("junction")]
internal sealed class OriginEntry
{
    [Description("Name of the box.")]
    public string? Box { get; set; }

    [Description("Number of the output, from 1.")]
    public int? Output { get; set; }

    [Description("Name of the junction where another run ends.")]
    public string? Junction { get; set; }
}
