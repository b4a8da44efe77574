using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device that comes up, pulls its voltage under the drop-out, and restarts for ever.</summary>
public sealed class SettlesBelowDropOutRule() : StartRule("settles-below-drop-out", StartVerdict.SettlesBelowDropOut,
    "With the device drawing, its voltage settles under its drop-out voltage: it restarts for ever.",
    "Use a thicker or shorter conductor, set the supply higher within every device's range if it can be trimmed, or start with less on.")
{
    private protected override (double Measured, double Limit) Compared(DeviceInCondition device, Starting starting) =>
        (device.SolvedVolts, starting.DropOutVolts);

    private protected override string Message(Condition condition, double measured, double limit) =>
        measured > 0 ? Invariant($"Its voltage would settle at {measured:0.##} V in \"{condition}\"; it drops out at {limit:0.##} V and cannot stay on.")
            : Invariant($"Its voltage settles nowhere in \"{condition}\"; it drops out at {limit:0.##} V and cannot stay on.");
}
