using System;
using System.Collections.Generic;
using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

[Form("given", Optional = "also")]
[Form("on", Needs = "name")]
internal sealed class ConditionEntry
{
    [Description("One of the conditions that the library gives: their name and shares.")]
    public Written<Func<Surroundings, Condition>>? Given { get; set; }

    [Description("How the condition is called; a given one may be called otherwise.")]
    public string? Name { get; set; }

    [Description("The shares that are on beside the base draw.")]
    public List<Written<DrawShares>?>? On { get; set; }

    [Description("Shares that are on beside those of the given condition.")]
    public List<Written<DrawShares>?>? Also { get; set; }

    [Description("How many motors of the whole site move at once; all of them where this is left out.")]
    public int? MotorsMoving { get; set; }

    [JsonRequired, Description("Temperature of the conductors.")]
    public Written<Temperature>? Cable { get; set; }

    [JsonRequired, Description("Temperature of the air around the boxes; around the supply itself where its box has no enclosure.")]
    public Written<Temperature>? Box { get; set; }

    [JsonRequired, Description("Temperature of the air around the devices.")]
    public Written<Temperature>? Camera { get; set; }

    [Description("Sunlight on what is not in the shade, square to the light; left out where there is none.")]
    public Written<Irradiance>? Sun { get; set; }

    [Description("Voltage at the inlet of every supply; its nominal one where this is left out.")]
    public Written<ElectricPotential>? LineVoltage { get; set; }

    [Description("How long it lasts.")]
    public Written<Duration>? Duration { get; set; }
}
