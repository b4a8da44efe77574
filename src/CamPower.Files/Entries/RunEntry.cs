using System.Collections.Generic;
using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;

namespace CamPower.Files.Entries;

internal sealed class RunEntry
{
    [JsonRequired, Description("Where it starts: an output of a box, or a junction.")]
    public OriginEntry? From { get; set; }

    [JsonRequired, Description("Name of the junction at its far end.")]
    public string? To { get; set; }

    [JsonRequired, Description("Lengths of cable and joints, from the source to the load; at least one length of cable.")]
    public List<PartEntry?>? Parts { get; set; }

    [Description("Name of the junction whose negative it shares, instead of having a return conductor of its own.")]
    public string? ReturnAt { get; set; }

    [Description("How it lies, as far as its heat is concerned.")]
    public Written<Laying>? Laying { get; set; }
}
