using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class OutputEntry
{
    [JsonRequired, Description("The current that it may carry all the time.")]
    public Written<ElectricCurrent>? Limit { get; set; }

    [Description("The name of its protective device, or none; left out where nobody declares it.")]
    public string? Protection { get; set; }

    [Description("The power-limit class that its label claims; left out where it claims none.")]
    public Written<PowerLimitClass>? ClaimedClass { get; set; }
}
