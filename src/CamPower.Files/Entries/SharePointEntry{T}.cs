using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

/// <summary>One point of a curve, whatever the curve depends on.</summary>
internal sealed class SharePointEntry<T>
{
    [JsonRequired, Description("Where the share holds.")]
    public Written<T>? At { get; set; }

    [JsonRequired, Description("The share there.")]
    public Written<Ratio>? Share { get; set; }
}
