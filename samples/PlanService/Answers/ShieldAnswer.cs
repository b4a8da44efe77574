using CamPower;

namespace PlanService.Answers;

/// <summary>One video shield that carries return current, in the condition with the largest voltage along it.</summary>
/// <remarks>Both voltages are absent where what is joined to the shield has no operating point.</remarks>
public sealed record ShieldAnswer
{
    /// <summary>The device at one end.</summary>
    public required string Device { get; init; }

    /// <summary>The ground at the other end.</summary>
    public required string Ground { get; init; }

    /// <summary>The condition with the largest voltage along it.</summary>
    public required string WorstCondition { get; init; }

    /// <summary>Direct voltage along the shield, as text: the clamp of the recorder removes it.</summary>
    public string? DcShift { get; init; }

    /// <summary>Direct voltage along the shield. [V]</summary>
    public double? DcShiftInVolts { get; init; }

    /// <summary>Voltage at mains frequency along the shield, RMS, as text: it is seen; absent where a supply does not declare its ripple.</summary>
    public string? MainsFrequencyVoltage { get; init; }

    /// <summary>Voltage at mains frequency along the shield, RMS. [V]</summary>
    public double? MainsFrequencyVoltageInVolts { get; init; }

    internal static ShieldAnswer Of(ShieldAssessment shield)
    {
        ShieldInCondition worst = shield.Worst;
        return new ShieldAnswer
        {
            Device = shield.Link.Device,
            Ground = shield.Link.Ground,
            WorstCondition = worst.Condition.Name,
            DcShift = worst.HasOperatingPoint ? Written.Text(worst.DcShift) : null,
            DcShiftInVolts = worst.HasOperatingPoint ? worst.DcShift.Volts : null,
            MainsFrequencyVoltage = worst.MainsFrequencyVoltage is { } hum ? Written.Text(hum) : null,
            MainsFrequencyVoltageInVolts = worst.MainsFrequencyVoltage?.Volts,
        };
    }
}
