using System.Collections.Generic;
using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

[Form("outputs", "outputLimit")]
[Form("outputLimits")]
[Form("adapter")]
internal sealed class BoxEntry
{
    [JsonRequired, Description("The name by which runs refer to it.")]
    public string? Name { get; set; }

    [JsonRequired]
    public SupplyEntry? Supply { get; set; }

    [Description("How many outputs it has, all with the same limit.")]
    public int? Outputs { get; set; }

    [Description("The current that each output may carry all the time.")]
    public Written<ElectricCurrent>? OutputLimit { get; set; }

    [Description("The current that each output may carry all the time, output by output.")]
    public List<Written<ElectricCurrent>?>? OutputLimits { get; set; }

    [Description("True for an adapter: its only output is its own lead.")]
    public bool? Adapter { get; set; }
}
