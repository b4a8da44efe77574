using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device that never sees its turn-on voltage, not even before it draws anything.</summary>
public sealed class UnloadedBelowTurnOnRule() : StartRule("unloaded-voltage-below-turn-on", StartVerdict.UnloadedBelowTurnOn,
    "The voltage at the terminals is under the turn-on voltage even before the device draws anything.",
    "Set the supply higher if it can be trimmed, use one of a higher voltage within the device's range, or take other devices off this run.")
{
    private protected override (double Measured, double Limit) Compared(DeviceInCondition device, Starting starting) =>
        (device.UnloadedVolts, starting.TurnOnVolts);

    private protected override string Message(Condition condition, double measured, double limit) =>
        measured > 0 ? Invariant($"It sees {measured:0.##} V before it draws anything in \"{condition}\"; it turns on at {limit:0.##} V and does not start.")
            : Invariant($"It sees no steady voltage in \"{condition}\", as others draw too much; it turns on at {limit:0.##} V.");
}
