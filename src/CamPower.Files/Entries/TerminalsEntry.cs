using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;

namespace CamPower.Files.Entries;

internal sealed class TerminalsEntry
{
    [JsonRequired, Description("The smallest wire that they hold.")]
    public Written<WireSize>? Smallest { get; set; }

    [JsonRequired, Description("The largest wire that fits.")]
    public Written<WireSize>? Largest { get; set; }
}
