using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Sections;
using static System.FormattableString;

namespace CamPower.Reports.Verdicts;

/// <summary>What is not stated of a site, and of what, so that a verdict is not known.</summary>
internal static class Unstated
{
    private static readonly (FaultData Data, string Words)[] OfFaults =
    [
        (FaultData.Protection, "protective device"),
        (FaultData.Overload, "overload behavior of the supply"),
        (FaultData.SourceResistance, "source resistance of the supply"),
        (FaultData.DeviceTemperature, "re-rating of the protective device for the air in the box"),
        (FaultData.Insulation, "cable insulation"),
        (FaultData.InstallationMethod, "installation method of the cable"),
    ];

    /// <summary>What is not stated, and the boxes, outputs or models that it is not stated of.</summary>
    internal static ILookup<string, string> Of(Evidence evidence)
    {
        IEnumerable<(string What, string Where)> faults =
            from data in OfFaults
            from box in evidence.Faults.GroupBy(o => o.Box)
            let outputs = box.Where(o => o.Missing.HasFlag(data.Data)).ToList()
            where outputs.Count > 0
            select (data.Words, Place(box.Key, outputs, box.Count()));
        IEnumerable<(string What, string Where)> warmth =
            from box in evidence.Assessment.Boxes
            where box.InConditions.Any(c => c.InsideTemperature is null || c.IsInsideAtLeast)
            select ("efficiency of the supply", box.Box.Name);
        IEnumerable<(string What, string Where)> line =
            from receptacle in evidence.Receptacles
            from draw in receptacle.Worst.Draws
            where draw.Current is null
            select ("power factor of the supply", draw.Box.Name);
        IEnumerable<(string What, string Where)> starts =
            from device in evidence.Assessment.Devices
            where device.Device.Model.Starting is null
            select ("turn-on and drop-out voltage of the device", device.Device.Model.Name);
        IEnumerable<(string What, string Where)> starting =
            from box in evidence.Assessment.Boxes
            let missing = box.InConditions.Select(c => c.StartingCurrent.NotStated).FirstOrDefault(text => text is not null)
            where missing is not null
            select (missing, box.Box.Name);
        IEnumerable<(string What, string Where)> shields =
            from shield in evidence.Assessment.Shields
            where shield.Worst.MainsFrequencyVoltage is null
            from device in evidence.Assessment.Devices
            where string.Equals(device.Device.Name, shield.Link.Device, StringComparison.Ordinal)
            select ("ripple of the supply", device.Box.Name);
        return faults.Concat(warmth).Concat(line).Concat(starts).Concat(starting).Concat(shields).Distinct().ToLookup(item => item.What, item => item.Where, StringComparer.Ordinal);
    }

    private static string Place(DistributionBox box, List<OutputFaults> outputs, int used) =>
        outputs.Count == used ? box.Name : $"{box.Name} {(outputs.Count == 1 ? "output" : "outputs")} {Said.Numbers([.. outputs.Select(o => o.Output.Number)])}";
}
