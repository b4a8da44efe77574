namespace CamPower.Protection;

/// <summary>The cited numbers behind the protective devices.</summary>
internal static class ProtectionConstants
{
    /// <summary>Lowest breaking capacity of a miniature fuse marked L. [A]</summary>
    internal static CitedValue LowBreakingCapacity { get; } =
        new("Breaking capacity of a miniature fuse marked L, at least", 35, "A", Sources.Iec60127BreakingCapacity);

    /// <summary>What a miniature fuse of low breaking capacity interrupts, over its rated current. [1]</summary>
    internal static CitedValue LowBreakingMultiple { get; } =
        new("Breaking capacity of a miniature fuse marked L over its rated current", 10, "1", Sources.Iec60127BreakingCapacity);

    /// <summary>How the resistance of a resettable fuse grows with the air around it above 20 °C, well below its trip. [%/K]</summary>
    internal static CitedValue ResettableResistanceGrowth { get; } =
        new("Growth of the resistance of a resettable fuse with the air above 20 °C", 1, "%/K", Sources.GenericResettableResistance);

    /// <summary>Torque of the screw of a pluggable terminal, M2.5. [N·m]</summary>
    internal static CitedValue SmallTerminalTorque { get; } = new("Torque of an M2.5 terminal screw", 0.4, "N·m", Sources.TerminalTorque);

    /// <summary>Torque of the screw of a small terminal, M3. [N·m]</summary>
    internal static CitedValue TerminalTorque { get; } = new("Torque of an M3 terminal screw", 0.5, "N·m", Sources.TerminalTorque);

    /// <summary>Torque of a slotted screw for 18 to 10 AWG, its slot no longer than 1/4 in. [lb-in]</summary>
    internal static CitedValue SlottedTerminalTorque { get; } =
        new("Torque of a slotted terminal screw, 18 to 10 AWG, slot to 1/4 in", 20, "lb-in", Sources.TerminalTorque);

    /// <summary>The shortest operating time that the limits of a standard bound: below it arcing decides. [ms]</summary>
    internal static CitedValue ShortestBoundedTime { get; } =
        new("Shortest operating time bounded by the limits of a standard", 10, "ms", Sources.AdiabaticOperatingTime);

    /// <summary>The I²t of an inrush that repeats over the melting I²t of a fuse, at most. [%]</summary>
    internal static CitedValue InrushShare { get; } =
        new("I²t of a repeated inrush over the melting I²t of a fuse, at most", 22, "%", Sources.InrushPractice);

    /// <summary>Temperature of the air at which IEC 60127 rates a fuse; also taken of ISO 8820. [°C]</summary>
    internal static CitedValue IecReferenceTemperature { get; } =
        new("Temperature of the air at which IEC 60127 rates a fuse", 23, "°C", Sources.FuseReferenceTemperature);

    /// <summary>Temperature of the air at which UL 248-14 rates a fuse. [°C]</summary>
    internal static CitedValue UlReferenceTemperature { get; } =
        new("Temperature of the air at which UL 248-14 rates a fuse", 25, "°C", Sources.FuseReferenceTemperature);

    /// <summary>How far the air may be from that temperature for the rating to count. [K]</summary>
    internal static CitedValue ReferenceBand { get; } =
        new("Distance from the reference temperature within which the rating of a fuse counts", 5, "K", Sources.FuseReferenceTemperature);

    /// <summary>How far the currents of a fuse of unstated re-rating may be from its rating, in air that a box has. [%]</summary>
    internal static CitedValue UnstatedRerating { get; } =
        new("Change of the currents of a fuse of unstated re-rating, at most", 20, "%", Sources.UnstatedReratingPractice);

    /// <summary>What a fuse carries all the time in practice, over its rated current. [%]</summary>
    internal static CitedValue FuseContinuousShare { get; } =
        new("Continuous current of a fuse over its rated current, at most", 75, "%", Sources.FuseContinuousPractice);
}
