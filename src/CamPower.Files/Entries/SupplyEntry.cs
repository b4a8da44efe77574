using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class SupplyEntry
{
    [JsonRequired, Description("How the supply is called.")]
    public string? Name { get; set; }

    [JsonRequired]
    public Written<CurrentKind>? Output { get; set; }

    [JsonRequired, Description("Nominal output voltage; RMS if alternating.")]
    public Written<ElectricPotential>? Nominal { get; set; }

    [JsonRequired, Description("Rated output current in a cool room.")]
    public Written<ElectricCurrent>? RatedCurrent { get; set; }

    [JsonRequired, Description("How far the output may be off its set point.")]
    public Written<Ratio>? Tolerance { get; set; }

    [JsonRequired, Description("What is left of the rating as it warms: the name of a curve, or points in rising ambient.")]
    public DeratingEntry? Derating { get; set; }

    [Description("How far the output can be adjusted.")]
    public VoltageRangeEntry? Trim { get; set; }

    [Description("The voltage that it is adjusted to, inside the trim range.")]
    public Written<ElectricPotential>? SetPoint { get; set; }

    [Description("RMS ripple at mains frequency or its double, over the output voltage.")]
    public Written<Ratio>? Ripple { get; set; }
}
