using System.Collections.Generic;
using System.ComponentModel;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

internal sealed class InletEntry
{
    [Description("The voltage that it accepts; RMS if alternating.")]
    public VoltageRangeEntry? Voltage { get; set; }

    [Description("The peak current as it is switched on cold.")]
    public Written<ElectricCurrent>? InrushCurrent { get; set; }

    [Description("Power out over power in, against the load as a share of the rated current.")]
    public List<SharePointEntry<Ratio>?>? Efficiency { get; set; }

    [Description("Power in over apparent power in, against the load as a share of the rated current.")]
    public List<SharePointEntry<Ratio>?>? PowerFactor { get; set; }
}
