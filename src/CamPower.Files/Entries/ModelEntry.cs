using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;

namespace CamPower.Files.Entries;

[Form("draw")]
[Form("label")]
internal sealed class ModelEntry
{
    [JsonRequired, Description("The name by which devices refer to it.")]
    public string? Name { get; set; }

    [JsonRequired]
    public Written<DeviceKind>? Kind { get; set; }

    [Description("The DC voltage that it accepts.")]
    public VoltageRangeEntry? Dc { get; set; }

    [Description("The AC voltage that it accepts, RMS.")]
    public VoltageRangeEntry? Ac { get; set; }

    [Description("What it draws, in shares: watts are constant power, amperes constant current, ohms constant resistance.")]
    public DrawEntry? Draw { get; set; }

    [Description("What its label says it draws: a total in the worst condition.")]
    public LabelEntry? Label { get; set; }

    [Description("When it turns on and drops out.")]
    public StartingEntry? Starting { get; set; }

    [Description("The connector at which it takes its power.")]
    public ConnectorEntry? Connector { get; set; }

    [Description("What its input draws in the first moments when power comes; left out where nobody declares it.")]
    public InrushEntry? Inrush { get; set; }
}
