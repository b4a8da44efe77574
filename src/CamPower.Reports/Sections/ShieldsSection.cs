using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Section of the currents in video shields.</summary>
internal static class ShieldsSection
{
    internal static Section Of(IReadOnlyList<ShieldAssessment> shields) => new("Video shields",
    [
        new Paragraph("The recorder removes the direct voltage along a shield; that at mains frequency is seen in the picture."),
        new DataTable("Voltage along each video shield in its worst condition",
            [new("Device"), new("Ground"), new("In"), new("Direct, mV", true), new("Mains frequency, mV RMS", true)],
            [.. shields.Select(s => Row(s.Worst))]),
    ]);

    private static IReadOnlyList<string> Row(ShieldInCondition shield) =>
    [
        shield.Link.Device,
        shield.Link.Ground,
        shield.Condition.Name,
        shield.HasOperatingPoint ? Invariant($"{shield.DcShift.Millivolts:0.#}") : "no operating point",
        shield.MainsFrequencyVoltage is ElectricPotential hum ? Invariant($"{hum.Millivolts:0.##}") : "not known",
    ];
}
