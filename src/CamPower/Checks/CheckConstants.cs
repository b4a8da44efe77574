namespace CamPower.Checks;

/// <summary>The cited limits that rules set where nobody sets another.</summary>
internal static class CheckConstants
{
    /// <summary>Share of its derated rating that a supply is loaded with. [%]</summary>
    public static CitedValue Headroom { get; } =
        new("Loading of a supply, share of its derated rating", 80, "%", Sources.HeadroomPolicy);

    /// <summary>How far above the lowest voltage that it accepts a device should stay, as a share of that voltage. [%]</summary>
    public static CitedValue VoltageMargin { get; } =
        new("Margin above the lowest accepted voltage, share of that voltage", 2, "%", Sources.MarginPolicy);

    /// <summary>Highest temperature of an insulation that nobody declares. [°C]</summary>
    public static CitedValue UndeclaredInsulation { get; } =
        new("Highest temperature in service of an insulation that nobody declares", 60, "°C", Sources.UndeclaredInsulation);

    /// <summary>The highest direct voltage of extra-low voltage, free of ripple. [V]</summary>
    public static CitedValue ExtraLowDirectVoltage { get; } =
        new("Safety extra-low voltage, DC", 120, "V", Sources.ExtraLowVoltage);

    /// <summary>The highest alternating voltage of extra-low voltage, RMS. [V]</summary>
    public static CitedValue ExtraLowAlternatingVoltage { get; } =
        new("Safety extra-low voltage, AC, RMS", 50, "V", Sources.ExtraLowVoltage);

    /// <summary>Direct voltage up to which a part may be touched. [V]</summary>
    public static CitedValue AccessibleDirectVoltage { get; } =
        new("Direct voltage of parts that may be touched", 60, "V", Sources.AccessibleVoltage);

    /// <summary>Crest of an alternating voltage up to which a part may be touched. [V]</summary>
    public static CitedValue AccessibleCrestVoltage { get; } =
        new("Crest of an alternating voltage of parts that may be touched", 42.4, "V", Sources.AccessibleVoltage);

    /// <summary>Voltage at mains frequency along a video shield. [mV, RMS]</summary>
    public static CitedValue ShieldHum { get; } =
        new("Voltage at mains frequency along a video shield, RMS", 10, "mV", Sources.HumPolicy);

    /// <summary>How long a device goes without its supply and stays up. [ms]</summary>
    public static CitedValue RideThrough { get; } =
        new("Time that a device rides through without its supply", 20, "ms", Sources.RideThroughPolicy);

    /// <summary>How long a device may be dark and come back by itself, so that it counts as dark for seconds. [s]</summary>
    public static CitedValue LongestDark { get; } =
        new("Time for which a device is dark for seconds only, at most", 60, "s", Sources.DarkForSeconds);

    /// <summary>The current at which a protective device opens for certain, over what its conductor carries, at most. [1]</summary>
    public static CitedValue CertainOpening { get; } =
        new("Current that opens a protective device for certain over what its conductor carries, at most", 1.45, "1", Sources.OverloadCoordination);

    /// <summary>Power in a poor contact that does no harm. [W]</summary>
    public static CitedValue HarmlessSpot { get; } = new("Power in a poor contact that does no harm, at most", 15, "W", Sources.HotSpotPolicy);

    /// <summary>Power in a poor contact that is a hot spot and no more. [W]</summary>
    public static CitedValue HotSpot { get; } = new("Power in a poor contact that is a hot spot and no more, at most", 100, "W", Sources.HotSpotPolicy);

    /// <summary>From when on a load is continuous. [h]</summary>
    public static CitedValue ContinuousFrom { get; } = new("Shortest continuous load", Condition.ContinuousFromHours, "h", Sources.NecContinuousLoad);
}
