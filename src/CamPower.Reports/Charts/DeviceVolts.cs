using System;
using System.Linq;
using CamPower.Reports.Sections;
using static System.FormattableString;

namespace CamPower.Reports.Charts;

/// <summary>The volts of one device over all conditions beside those that it accepts.</summary>
internal sealed record DeviceVolts(
    string Name, string State, bool IsUp, double Lowest, double Highest, double AcceptedLow, double AcceptedHigh)
{
    internal double LeftEnd => IsUp ? Math.Min(Lowest, AcceptedLow) : AcceptedLow;

    internal double RightEnd => Math.Max(Highest, AcceptedHigh);

    internal string Label => IsUp ? Name : $"{Name}: {State}";

    internal bool IsInside => IsUp && Margin >= 0;

    /// <summary>To the nearer end of what is accepted; one that does not stay up comes before all others. [V]</summary>
    internal double Margin => IsUp ? Math.Min(Lowest - AcceptedLow, AcceptedHigh - Highest) : double.NegativeInfinity;

    internal static DeviceVolts Of(DeviceAssessment device)
    {
        DeviceInCondition worst = device.Worst;
        VoltageRange accepted = worst.Accepted!;
        bool isUp = worst.State == DeviceState.Up;
        return new DeviceVolts(device.Device.Name, Said.State(worst.State), isUp, isUp
            ? worst.Voltage.Volts
            : 0, device.LightLoadVoltage.Volts,
            accepted.Lowest.Volts, accepted.Highest.Volts);
    }

    internal string InWords() => IsUp
        ? Invariant($"{Name}: {Lowest:0.00} V to {Highest:0.00} V, accepts {AcceptedLow:0.##} V to {AcceptedHigh:0.##} V.")
        : Invariant($"{Name}: {State}; accepts {AcceptedLow:0.##} V to {AcceptedHigh:0.##} V.");
}
