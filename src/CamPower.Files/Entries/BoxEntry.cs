using System.Collections.Generic;
using System.ComponentModel;
using System.Text.Json.Serialization;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

[Form("outputs", "outputLimit", Optional = "outputProtection")]
[Form("outputList")]
[Form("adapter", Optional = "leadProtection")]
internal sealed class BoxEntry
{
    [JsonRequired, Description("The name by which runs refer to it.")]
    public string? Name { get; set; }

    [JsonRequired]
    public SupplyEntry? Supply { get; set; }

    [Description("How many outputs it has, all alike.")]
    public int? Outputs { get; set; }

    [Description("The current that each output may carry all the time.")]
    public Written<ElectricCurrent>? OutputLimit { get; set; }

    [Description("The name of the protective device of each output, or none; left out where nobody declares it.")]
    public string? OutputProtection { get; set; }

    [Description("Its outputs one by one, in the order of their numbers.")]
    public List<OutputEntry?>? OutputList { get; set; }

    [Description("True for an adapter: its only output is its own lead.")]
    public bool? Adapter { get; set; }

    [Description("The name of the protective device in the lead, or none; left out where nobody declares it.")]
    public string? LeadProtection { get; set; }

    [Description("The power-limit class that its label claims for each output; left out where it claims none.")]
    public Written<PowerLimitClass>? ClaimedClass { get; set; }

    [Description("The wire that the terminals of its outputs take.")]
    public TerminalsEntry? Terminals { get; set; }

    [Description("The case around it alone; left out, and without a cabinet, the air around its supply is as warm as its surroundings.")]
    public EnclosureEntry? Enclosure { get; set; }

    [Description("The name of the cabinet in which it stands beside other boxes.")]
    public string? Cabinet { get; set; }

    [Description("The name of the outlet that it is plugged into.")]
    public string? Outlet { get; set; }
}
