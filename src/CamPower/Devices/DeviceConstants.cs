namespace CamPower.Devices;

/// <summary>The cited numbers behind the protective devices.</summary>
public static class DeviceConstants
{
    /// <summary>What a miniature fuse of low breaking capacity interrupts at least. [A]</summary>
    public static CitedValue LowBreakingCapacity { get; } =
        new("Breaking capacity of a miniature fuse marked L, at least", 35, "A", Sources.Iec60127BreakingCapacity);

    /// <summary>What a miniature fuse of low breaking capacity interrupts, over its rated current. [1]</summary>
    public static CitedValue LowBreakingMultiple { get; } =
        new("Breaking capacity of a miniature fuse marked L over its rated current", 10, "1", Sources.Iec60127BreakingCapacity);

    /// <summary>What a miniature fuse of enhanced breaking capacity interrupts. [A]</summary>
    public static CitedValue EnhancedBreakingCapacity { get; } =
        new("Breaking capacity of a miniature fuse marked E", 150, "A", Sources.Iec60127BreakingCapacity);

    /// <summary>What a miniature fuse of high breaking capacity interrupts. [A]</summary>
    public static CitedValue HighBreakingCapacity { get; } =
        new("Breaking capacity of a miniature fuse marked H", 1500, "A", Sources.Iec60127BreakingCapacity);

    /// <summary>What a fuse carries all the time in practice, over its rated current. [%]</summary>
    public static CitedValue FuseContinuousShare { get; } =
        new("Continuous current of a fuse over its rated current, at most", 75, "%", Sources.FuseContinuousPractice);
}
