using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

[Form("duration")]
[Form("integral")]
internal sealed class InrushEntry
{
    [JsonRequired, Description("The largest current.")]
    public Written<ElectricCurrent>? Peak { get; set; }

    [Description("How long until it is over.")]
    public Written<Duration>? Duration { get; set; }

    [Description("Its I2t.")]
    public Written<JouleIntegral>? Integral { get; set; }
}
