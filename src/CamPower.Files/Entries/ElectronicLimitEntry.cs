using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class ElectronicLimitEntry
{
    [JsonRequired, Description("The current that it holds.")]
    public Written<ElectricCurrent>? Limit { get; set; }

    [JsonRequired, Description("How far that current may be off.")]
    public Written<Ratio>? Tolerance { get; set; }

    [JsonRequired, Description("It has opened when the limit has lasted so long.")]
    public Written<Duration>? OpensWithin { get; set; }

    [JsonRequired, Description("Its resistance while it carries current without limiting.")]
    public Written<ElectricResistance>? Resistance { get; set; }

    [JsonRequired, Description("The highest voltage that it interrupts.")]
    public Written<ElectricPotential>? VoltageRating { get; set; }

    [Description("The pause until it tries again; left out where it stays open until it is reset.")]
    public Written<Duration>? RetriesAfter { get; set; }
}
