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

    [JsonRequired, Description("How far the output may be off its set point, line and load regulation included.")]
    public Written<Ratio>? Tolerance { get; set; }

    [JsonRequired, Description("What is left of the rating as it warms, at another inlet voltage, or high above the sea: the name of a derating, or the derating in full.")]
    public DeratingEntry? Derating { get; set; }

    [Description("How far the output can be adjusted.")]
    public VoltageRangeEntry? Trim { get; set; }

    [Description("The voltage that it is adjusted to, inside the trim range.")]
    public Written<ElectricPotential>? SetPoint { get; set; }

    [Description("Rated output power, where the data sheet states one: nominal voltage times rated current otherwise.")]
    public Written<Power>? RatedPower { get; set; }

    [Description("RMS ripple at mains frequency or its double, over the output voltage.")]
    public Written<Ratio>? Ripple { get; set; }

    [Description("Resistance behind the terminals in a fault.")]
    public Written<ElectricResistance>? SourceResistance { get; set; }

    [Description("What it does in overload.")]
    public OverloadEntry? Overload { get; set; }

    [Description("Capacitance across the terminals of a DC output.")]
    public Written<ElectricCapacitance>? Capacitance { get; set; }

    [Description("The side that takes power in.")]
    public InletEntry? Inlet { get; set; }
}
