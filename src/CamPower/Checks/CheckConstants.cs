namespace CamPower.Checks;

/// <summary>The default limits of rules, each with its source.</summary>
internal static class CheckConstants
{
    /// <summary>Highest load of a supply in percent of its derated rating. [%]</summary>
    public static CitedValue Headroom { get; } =
        new("Load of a supply in percent of its derated rating, at most", 80, "%", Sources.HeadroomPolicy);

    /// <summary>Margin above the lowest voltage that a device accepts, in percent of that voltage. [%]</summary>
    public static CitedValue VoltageMargin { get; } =
        new("Margin above the lowest accepted voltage, in percent of that voltage", 2, "%", Sources.MarginPolicy);

    /// <summary>Least service temperature of an insulation that is not stated. [°C]</summary>
    public static CitedValue UnstatedInsulation { get; } =
        new("Highest temperature in service of an insulation that is not stated, at least", 60, "°C", Sources.InsulationNotStated);

    /// <summary>Greatest service temperature of an insulation that is not stated. [°C]</summary>
    public static CitedValue UnstatedInsulationAtMost { get; } =
        new("Highest temperature in service of an insulation that is not stated, at most", 90, "°C", Sources.CommonPractice);

    /// <summary>Highest direct voltage of extra-low voltage, free of ripple. [V]</summary>
    public static CitedValue ExtraLowDirectVoltage { get; } =
        new("Safety extra-low voltage, DC", 120, "V", Sources.ExtraLowVoltage);

    /// <summary>Highest alternating voltage of extra-low voltage, RMS. [V]</summary>
    public static CitedValue ExtraLowAlternatingVoltage { get; } =
        new("Safety extra-low voltage, AC, RMS", 50, "V", Sources.ExtraLowVoltage);

    /// <summary>Highest direct voltage of an accessible bare part. [V]</summary>
    public static CitedValue AccessibleDirectVoltage { get; } =
        new("Direct voltage of an accessible bare part", 60, "V", Sources.AccessibleVoltage);

    /// <summary>Highest crest of an alternating voltage of an accessible bare part. [V]</summary>
    public static CitedValue AccessibleCrestVoltage { get; } =
        new("Crest of an alternating voltage of an accessible bare part", 42.4, "V", Sources.AccessibleVoltage);

    /// <summary>Highest voltage at mains frequency along a video shield, RMS. [mV]</summary>
    public static CitedValue ShieldHum { get; } =
        new("Voltage at mains frequency along a video shield, RMS", 10, "mV", Sources.HumPolicy);

    /// <summary>Longest lead that a camera comes with. [m]</summary>
    public static CitedValue LongestPigtail { get; } =
        new("Lead that a camera comes with, at most", 1, "m", Sources.CommonPractice);

    /// <summary>Time for which a device stays up without its supply. [ms]</summary>
    public static CitedValue RideThrough { get; } =
        new("Time that a device rides through without its supply", 20, "ms", Sources.RideThroughPolicy);

    /// <summary>Longest time that counts as dark for seconds, before a device is back by itself. [s]</summary>
    public static CitedValue LongestDark { get; } =
        new("Time for which a device is dark for seconds only, at most", 60, "s", Sources.DarkForSeconds);

    /// <summary>Highest current at which a protective device is certain to open, in multiples of the ampacity of its conductor.
    /// [1]</summary>
    public static CitedValue CertainOpening { get; } =
        new("Current at which a protective device is certain to open over the ampacity of its conductor, at most", 1.45, "1",
            Sources.OverloadCoordination);

    /// <summary>Rating of a protective device over the limit of its output from which on nothing protects the output. [1]</summary>
    public static CitedValue FarAboveLimit { get; } =
        new("Rating of a protective device over the limit of its output, at most", 2, "1", Sources.CommonPractice);

    /// <summary>Power in a poor contact up to which it does no harm. [W]</summary>
    public static CitedValue HarmlessSpot { get; } =
        new("Power in a poor contact that does no harm, at most", 15, "W", Sources.HotSpotPolicy);

    /// <summary>Power in a poor contact up to which it is a hot spot, but no fire. [W]</summary>
    public static CitedValue HotSpot { get; } =
        new("Power in a poor contact that is a hot spot only, at most", 100, "W", Sources.HotSpotPolicy);

    /// <summary>Heat of a joint in service that is no more than usual. [W]</summary>
    public static CitedValue WarmJoint { get; } = new("Heat of a joint in service, at most", 2, "W", Sources.CommonPractice);

    /// <summary>What protective devices behind a supply without a limit may carry together, over its rated current. [1]</summary>
    public static CitedValue SecondaryProtection { get; } =
        new("Protective devices behind a transformer over its rated current, at most", 1.25, "1", Sources.TransformerProtection);

    /// <summary>The same of a supply of less than <see cref="LargeSecondary"/>. [1]</summary>
    public static CitedValue SmallSecondaryProtection { get; } =
        new("Protective devices behind a small transformer over its rated current, at most", 1.67, "1", Sources.TransformerProtection);

    /// <summary>Rated current from which a supply is no small one. [A]</summary>
    public static CitedValue LargeSecondary { get; } =
        new("Rated current of a transformer that is not small, at least", 9, "A", Sources.TransformerProtection);

    /// <summary>Duration from which a load is continuous. [h]</summary>
    public static CitedValue ContinuousFrom { get; } =
        new("Shortest continuous load", Condition.ContinuousFromHours, "h", Sources.NecContinuousLoad);
}
