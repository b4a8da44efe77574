using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Table of the voltage and current of devices on transformers, each in its worst condition.</summary>
internal static class AlternatingTable
{
    private static readonly Column[] Columns =
        [new("Device"), new("Input"), new("Crest, V", true), new("Valley, V", true), new("True RMS, V", true), new("RMS, A", true),
            new("Peak, A", true), new("Apparent power, VA", true), new("Power factor", true)];

    /// <summary>The table of some devices; nothing where none was solved as alternating current.</summary>
    internal static IEnumerable<DataTable> Of(IEnumerable<DeviceAssessment> devices)
    {
        IReadOnlyList<string>[] rows = [.. devices.Where(d => d.Worst.Ac is not null).Select(d => Row(d.Device.Name, d.Worst.Ac!))];
        if (rows.Length > 0) yield return new DataTable("On alternating current, at the lowest mains voltage", Columns, rows);
    }

    private static IReadOnlyList<string> Row(string name, AcInCondition ac) =>
    [
        name,
        ac.Stage?.ToString() ?? "not stated",
        Said.Volts(ac.Crest),
        ac.Valley is UnitsNet.ElectricPotential valley ? Said.Volts(valley) : Said.Nothing,
        Said.Volts(ac.RmsVoltage),
        Said.Amperes(ac.Current),
        Said.Amperes(ac.PeakCurrent),
        Invariant($"{ac.ApparentPower.Voltamperes:0.0}"),
        Invariant($"{ac.PowerFactor.DecimalFractions:0.00}"),
    ];
}
