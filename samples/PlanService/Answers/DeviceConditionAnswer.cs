using CamPower;

namespace PlanService.Answers;

/// <summary>One device in one condition. Only a device that is up has a voltage, a current and a margin.</summary>
public sealed record DeviceConditionAnswer
{
    /// <summary>The condition.</summary>
    public required string Condition { get; init; }

    /// <summary>What becomes of the device: up, supply-overloaded, restarting, never-up, no-operating-point or wrong-current.</summary>
    public required string State { get; init; }

    /// <summary>Whether nothing that is declared keeps it from starting.</summary>
    public required bool WouldStart { get; init; }

    /// <summary>Voltage at its terminals, as text.</summary>
    public string? Voltage { get; init; }

    /// <summary>Voltage at its terminals. [V]</summary>
    public double? VoltageInVolts { get; init; }

    /// <summary>Current that it draws, as text.</summary>
    public string? Current { get; init; }

    /// <summary>Current that it draws. [A]</summary>
    public double? CurrentInAmperes { get; init; }

    /// <summary>How far its voltage lies above the lowest that it accepts, as text; negative below it.</summary>
    public string? Margin { get; init; }

    /// <summary>How far its voltage lies above the lowest that it accepts. [V]</summary>
    public double? MarginInVolts { get; init; }

    internal static DeviceConditionAnswer Of(DeviceInCondition device)
    {
        bool isUp = device.State == DeviceState.Up;
        return new DeviceConditionAnswer
        {
            Condition = device.Condition.Name,
            State = Word.Of(device.State),
            WouldStart = device.WouldStart,
            Voltage = isUp ? Written.Text(device.Voltage) : null,
            VoltageInVolts = isUp ? device.Voltage.Volts : null,
            Current = isUp ? Written.Text(device.Current) : null,
            CurrentInAmperes = isUp ? device.Current.Amperes : null,
            Margin = isUp ? Written.Text(device.Margin) : null,
            MarginInVolts = isUp ? device.Margin.Volts : null,
        };
    }
}
