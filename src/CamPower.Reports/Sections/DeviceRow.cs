using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>One device on a line.</summary>
internal static class DeviceRow
{
    internal static IReadOnlyList<Column> Columns { get; } =
    [
        new("Device"), new("Output", true), new("Cable, one way"), new("Accepts, V"), new("Gets at worst, V", true), new("In"), new("Margin, V", true), new("At light load, V", true), new("Starts"),
    ];

    internal static IReadOnlyList<string> Of(DeviceAssessment device)
    {
        DeviceInCondition worst = device.Worst;
        bool isUp = worst.State == DeviceState.Up;
        return
        [
            device.Device.Name,
            Invariant($"{device.Output.Number}"),
            Said.Cable(device.Path),
            worst.Accepted is VoltageRange accepted ? Said.Range(accepted) : "not this current",
            isUp ? Said.Volts(worst.Voltage) : Said.State(worst.State),
            worst.Condition.Name,
            isUp ? Said.SignedVolts(worst.Margin) : Said.Nothing,
            worst.State == DeviceState.WrongCurrent ? Said.Nothing : Said.Volts(device.LightLoadVoltage) + (device.AtLightLoad.Verdict == Verdict.Violated ? ", too much" : string.Empty),
            Starts(device),
        ];
    }

    private static string Starts(DeviceAssessment device) => device.InConditions.FirstOrDefault(c => !c.WouldStart) is DeviceInCondition not
        ? $"not in {not.Condition}"
        : Said.Start(device.Worst.Start);
}
