using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Table of the voltages of devices against what they accept, and the load of their outputs: one device on a line.</summary>
internal static class DeviceTable
{
    /// <summary>The devices of one box, by output.</summary>
    internal static DataTable Of(BoxAssessment box, IEnumerable<DeviceAssessment> devices) =>
        Of($"Devices on {box.Box}", "Output", devices, d => Invariant($"{d.Output.Number}"), _ => box);

    /// <summary>The devices of several boxes.</summary>
    internal static DataTable Of(string caption, IEnumerable<DeviceAssessment> devices, IReadOnlyList<BoxAssessment> boxes) =>
        Of(caption, "Box or adapter", devices, d => d.Box.Name, d => boxes.First(b => b.Box == d.Box));

    private static DataTable Of(string caption, string from, IEnumerable<DeviceAssessment> devices, Func<DeviceAssessment, string> place,
        Func<DeviceAssessment, BoxAssessment> box) => new(caption,
        [
            new("Device"), new(from), new("Cable, one way"), new("Accepts, V"), new("Gets at worst, V", true), new("In"),
                new("At light load, V", true),
            new("Least margin, V", true), new("Starts"), new("Output load, A"),
        ],
        [.. devices.Select(d => Row(d, place(d), box(d).Outputs.First(o => o.Output == d.Output)))]);

    private static IReadOnlyList<string> Row(DeviceAssessment device, string place, OutputAssessment output)
    {
        DeviceInCondition worst = device.Worst;
        bool isUp = worst.State == DeviceState.Up;
        return
        [
            device.Device.Name,
            place,
            Said.Cable(device.Path),
            worst.Accepted is VoltageRange accepted ? Said.Range(accepted) : "no: AC/DC mismatch",
            isUp ? Said.Volts(worst.Voltage) + (device.InConditions.Any(c => c.IsOpenedInService) ? ", fuse or limit opens" : string.Empty)
                : Said.State(worst.State),
            worst.Condition.Name,
            worst.State == DeviceState.WrongCurrent
                ? Said.Nothing
                : Said.Volts(device.LightLoadVoltage) + (device.AtLightLoad.Verdict == Verdict.Violated ? ", too high" : string.Empty),
            isUp && worst.Accepted is VoltageRange range ? Margin(device, range) : Said.Nothing,
            Starts(device),
            Invariant(
                $"{(output.Worst.IsDemandOnly ? "needs " : "")}{output.Worst.Current.Amperes:0.00} of {output.Output.Limit.Amperes:0.##}"),
        ];
    }

    // To the nearer end of what it accepts: a device that sees too much has no margin, however far it is from too little.
    private static string Margin(DeviceAssessment device, VoltageRange accepted) =>
        Said.SignedVolts(ElectricPotential.FromVolts(
            Math.Min(device.Worst.Margin.Volts, accepted.Highest.Volts - device.LightLoadVoltage.Volts)));

    private static string Starts(DeviceAssessment device) => device.InConditions.FirstOrDefault(c => !c.WouldStart) is DeviceInCondition not
        ? $"not in {not.Condition}"
        : Said.Start(device.Worst.Start);
}
