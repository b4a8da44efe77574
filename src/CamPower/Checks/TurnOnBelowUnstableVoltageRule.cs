using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device whose draw, at the moment it turns on, pulls its own voltage down.</summary>
public sealed class TurnOnBelowUnstableVoltageRule() : StartRule("turn-on-below-unstable-voltage", StartVerdict.TurnOnBelowUnstableVoltage,
    "The device turns on at a voltage from which its own draw pulls it down, and declares no soft start.",
    "Use a thicker or shorter conductor, or a device with a soft start or a higher turn-on voltage.")
{
    private protected override (double Measured, double Limit) Compared(DeviceInCondition device, Starting starting) =>
        (starting.TurnOnVolts, device.UnstableVoltage!.Value.Volts);

    private protected override string Message(Condition condition, double measured, double limit) =>
        Invariant($"It turns on at {measured:0.##} V in \"{condition}\"; below {limit:0.##} V its own draw pulls its voltage down.");
}
