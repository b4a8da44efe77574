using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class ResettableFuseEntry
{
    [JsonRequired, Description("The largest current that it carries without tripping.")]
    public Written<ElectricCurrent>? HoldCurrent { get; set; }

    [JsonRequired, Description("The smallest current that trips it for certain.")]
    public Written<ElectricCurrent>? TripCurrent { get; set; }

    [JsonRequired, Description("The current at which its time to trip is stated.")]
    public Written<ElectricCurrent>? TimedCurrent { get; set; }

    [JsonRequired, Description("It has tripped by then at that current.")]
    public Written<Duration>? LongestTimeToTrip { get; set; }

    [JsonRequired, Description("Its resistance new.")]
    public Written<ElectricResistance>? LeastResistance { get; set; }

    [JsonRequired, Description("Its resistance an hour after a trip.")]
    public Written<ElectricResistance>? GreatestResistance { get; set; }

    [JsonRequired, Description("How its currents change with the air around it.")]
    public AmbientCurveEntry? Thermal { get; set; }

    [JsonRequired, Description("The highest voltage that it stands tripped.")]
    public Written<ElectricPotential>? MaximumVoltage { get; set; }

    [Description("The largest current that it interrupts.")]
    public Written<ElectricCurrent>? MaximumCurrent { get; set; }

    [Description("The power that keeps it tripped.")]
    public Written<Power>? TrippedPower { get; set; }
}
