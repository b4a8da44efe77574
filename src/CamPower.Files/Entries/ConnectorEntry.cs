using System.ComponentModel;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

[Form("usual")]
[Form("name", "ratedCurrent", Optional = "voltageClass")]
internal sealed class ConnectorEntry
{
    [Description("A connector from the catalogue of the library.")]
    public Written<Connector>? Usual { get; set; }

    [Description("How it is called.")]
    public string? Name { get; set; }

    [Description("What each of its contacts carries all the time.")]
    public Written<ElectricCurrent>? RatedCurrent { get; set; }

    [Description("The supply voltages that it is meant for.")]
    public VoltageRangeEntry? VoltageClass { get; set; }

    [Description("The wire that it takes.")]
    public TerminalsEntry? Wires { get; set; }
}
