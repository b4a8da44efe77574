using System.Collections.Generic;
using System.ComponentModel;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

/// <summary>How a protective device changes with the air around it: points and where they come from, or the name of a curve of the library.</summary>
internal sealed class AmbientCurveEntry : IHasTextForm
{
    [JsonRequired, Description("Where the points come from: a data sheet.")]
    public string? Source { get; set; }

    [JsonRequired, Description("Points in rising temperature: the share of every rated current, 100 % where nothing changes.")]
    public List<SharePointEntry<Temperature>?>? Points { get; set; }

    string IHasTextForm.TextDescription => Words.Thermal.Description;

    JsonObject IHasTextForm.TextSchema => Words.Thermal.Schema;

    /// <summary>The curve of the library, or null where the members say it.</summary>
    internal AmbientCurve? Named { get; set; }

    void IHasTextForm.ReadText(string text) => Named = Words.Thermal.Parse(text);

    string? IHasTextForm.WriteText() => Named is null ? null : Words.Thermal.Format(Named);
}
