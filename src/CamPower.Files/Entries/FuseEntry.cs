using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class FuseEntry
{
    [JsonRequired, Description("The gates of its standard.")]
    public Written<FuseCharacteristic>? Characteristic { get; set; }

    [JsonRequired, Description("Its rated current.")]
    public Written<ElectricCurrent>? RatedCurrent { get; set; }

    [JsonRequired, Description("The highest voltage that it interrupts.")]
    public Written<ElectricPotential>? VoltageRating { get; set; }

    [JsonRequired, Description("The largest current that it interrupts.")]
    public Written<ElectricCurrent>? BreakingCapacity { get; set; }

    [JsonRequired, Description("Its resistance cold.")]
    public Written<ElectricResistance>? ColdResistance { get; set; }

    [Description("The least I2t that melts it; a typical value is none.")]
    public Written<JouleIntegral>? LeastMeltingIntegral { get; set; }

    [Description("How its rated current changes with the air around it.")]
    public AmbientCurveEntry? Rerating { get; set; }
}
