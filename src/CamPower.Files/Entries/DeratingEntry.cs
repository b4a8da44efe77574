using System.Collections.Generic;
using System.ComponentModel;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

/// <summary>A derating in full, or the name of one of the library.</summary>
internal sealed class DeratingEntry : IHasTextForm
{
    [JsonRequired, Description("The share of the rating that is left, by the temperature of the air around the supply: points in rising temperature.")]
    public List<SharePointEntry<Temperature>?>? Ambient { get; set; }

    [Description("The share of the rating that is left, by the voltage at the inlet: points in rising voltage, over the whole range of the inlet.")]
    public List<SharePointEntry<ElectricPotential>?>? LineVoltage { get; set; }

    [Description("By how much warmer the air counts high above the sea.")]
    public AltitudeDeratingEntry? Altitude { get; set; }

    string IHasTextForm.TextDescription => Words.Derating.Description;

    JsonObject IHasTextForm.TextSchema => Words.Derating.Schema;

    /// <summary>The derating of the library, or null where the members say it.</summary>
    internal Derating? Named { get; set; }

    void IHasTextForm.ReadText(string text) => Named = Words.Derating.Parse(text);

    string? IHasTextForm.WriteText() => Named is null ? null : Words.Derating.Format(Named);
}
