namespace CamPower.Supplies;

/// <summary>The cited numbers behind the supplies.</summary>
internal static class SupplyConstants
{
    /// <summary>Lowest ambient of the generic derating curve. [°C]</summary>
    internal static CitedValue GenericFrom { get; } =
        new("Lowest ambient of a generic enclosed supply", -20, "°C", Sources.GenericDerating);

    /// <summary>Highest ambient at which a generic enclosed supply gives its full rating. [°C]</summary>
    internal static CitedValue GenericFullTo { get; } =
        new("Highest ambient at which a generic enclosed supply keeps its full rating", 50, "°C", Sources.GenericDerating);

    /// <summary>Highest ambient of the generic derating curve. [°C]</summary>
    internal static CitedValue GenericTo { get; } =
        new("Highest ambient of a generic enclosed supply", 70, "°C", Sources.GenericDerating);

    /// <summary>Share of the rating at the highest ambient of the generic curve: 2.5 % lost per kelvin above 50 °C. [%]</summary>
    internal static CitedValue GenericShareAtHighest { get; } =
        new("Share of its rating that a generic enclosed supply keeps at its highest ambient", 50, "%", Sources.GenericDerating);

    /// <summary>Emission coefficient of the diodes that join two supplies. [1]</summary>
    internal static CitedValue DiodeEmission { get; } =
        new("Emission coefficient of a Schottky diode that joins two supplies", 1.05, "1", Sources.SchottkyDiode);

    /// <summary>Uncertainty of a set point that is trimmed by hand, in percent of it. [%]</summary>
    internal static CitedValue SetPointUncertainty { get; } =
        new("Uncertainty of a set point that is trimmed by hand", 0.5, "%", Sources.SetPointPractice);

    /// <summary>Emissivity of paint and powder coats of every color. [1]</summary>
    internal static CitedValue PaintEmissivity { get; } =
        new("Emissivity of painted sheet steel", 0.9, "1", Sources.PaintEmissivity);

    /// <summary>Share of the sunlight that light gray takes up. [1]</summary>
    internal static CitedValue LightGrayAbsorptance { get; } =
        new("Solar absorptance of light gray paint and plastic", 0.6, "1", Sources.LightGrayAbsorptance);

    /// <summary>Emissivity of weathered galvanized steel. [1]</summary>
    internal static CitedValue GalvanizedEmissivity { get; } =
        new("Emissivity of weathered galvanized steel", 0.28, "1", Sources.GalvanizedSurface);

    /// <summary>Share of the sunlight that weathered galvanized steel takes up. [1]</summary>
    internal static CitedValue GalvanizedAbsorptance { get; } =
        new("Solar absorptance of weathered galvanized steel", 0.8, "1", Sources.GalvanizedSurface);

    /// <summary>Emissivity of new galvanized steel. [1]</summary>
    internal static CitedValue NewGalvanizedEmissivity { get; } =
        new("Emissivity of new galvanized steel", 0.13, "1", Sources.GalvanizedSurface);

    /// <summary>Share of the sunlight that new galvanized steel takes up. [1]</summary>
    internal static CitedValue NewGalvanizedAbsorptance { get; } =
        new("Solar absorptance of new galvanized steel", 0.65, "1", Sources.GalvanizedSurface);

    /// <summary>Emissivity of plastic enclosures. [1]</summary>
    internal static CitedValue PlasticEmissivity { get; } =
        new("Emissivity of a plastic enclosure", 0.9, "1", Sources.PlasticEnclosure);

    /// <summary>Thickness of the wall of a plastic enclosure. [mm]</summary>
    internal static CitedValue PlasticThickness { get; } =
        new("Wall of a plastic enclosure", 3, "mm", Sources.PlasticEnclosure);

    /// <summary>Thermal conductivity of the plastic of enclosures. [W/(m·K)]</summary>
    internal static CitedValue PlasticConductivity { get; } =
        new("Thermal conductivity of the plastic of an enclosure", 0.2, "W/(m·K)", Sources.PlasticEnclosure);

    /// <summary>Altitude up to which a generic supply keeps its ambient rating. [m]</summary>
    internal static CitedValue GenericAltitudeFrom { get; } =
        new("Altitude up to which a generic supply keeps its ambient rating", 2000, "m", Sources.GenericAltitudeDerating);

    /// <summary>By how much warmer the air counts for every 1000 m above that. [K]</summary>
    internal static CitedValue GenericAltitudeRise { get; } =
        new("By how much warmer the air counts to a generic supply for every 1000 m above that", 5, "K", Sources.GenericAltitudeDerating);

    /// <summary>Share of the rating of a receptacle that may be plugged in. [%]</summary>
    internal static CitedValue ReceptacleShare { get; } =
        new("Load plugged into a receptacle over its rating, at most", 80, "%", Sources.NecReceptacle);

    /// <summary>Highest line voltage of a receptacle to which that share belongs: 127 V and a little more. [V]</summary>
    internal static CitedValue HighestVoltageOfShare { get; } =
        new("Line voltage of a North American receptacle, at most", 130, "V", Sources.CommonPractice);

    /// <summary>Ripple of a regulated output up to which it is part of its tolerance. [%]</summary>
    internal static CitedValue RippleInTolerance { get; } =
        new("Ripple of a regulated output that counts as part of its tolerance, RMS, at most", 1, "%", Sources.CommonPractice);

    /// <summary>The lower of the usual mains frequencies: capacitors discharge for longer. [Hz]</summary>
    internal static CitedValue LowerMainsFrequency { get; } = new("Lower of the usual mains frequencies", 50, "Hz", Sources.CommonPractice);

    /// <summary>Lower edge of the instantaneous band of a breaker of type B, over its rated current. [1]</summary>
    internal static CitedValue TypeBFrom { get; } =
        new("Lower edge of the instantaneous band of a type B breaker over its rated current", 3, "1", Sources.BreakerBands);

    /// <summary>Lower edge of the band of type C, upper edge of that of type B. [1]</summary>
    internal static CitedValue TypeCFrom { get; } =
        new("Lower edge of the instantaneous band of a type C breaker over its rated current", 5, "1", Sources.BreakerBands);

    /// <summary>Lower edge of the band of type D, upper edge of that of type C. [1]</summary>
    internal static CitedValue TypeDFrom { get; } =
        new("Lower edge of the instantaneous band of a type D breaker over its rated current", 10, "1", Sources.BreakerBands);

    /// <summary>Upper edge of the instantaneous band of a breaker of type D, over its rated current. [1]</summary>
    internal static CitedValue TypeDTo { get; } =
        new("Upper edge of the instantaneous band of a type D breaker over its rated current", 20, "1", Sources.BreakerBands);

    /// <summary>Half a cycle of the slower mains frequency: the shortest sine of which the bands of breakers speak. [ms]</summary>
    internal static CitedValue HalfCycle { get; } =
        new("Half a cycle of mains of 50 Hz", 10, "ms", Sources.BreakerBands);

    /// <summary>Share of the rated residual operating current up to which a residual-current device must not trip. [%]</summary>
    internal static CitedValue ResidualHold { get; } =
        new("Residual current at which a residual-current device must not trip, over its rated one", 50, "%", Sources.ResidualCurrent);

    /// <summary>Share of the rated residual operating current that standing leakage may take. [%]</summary>
    internal static CitedValue StandingLeakage { get; } =
        new("Standing leakage of a circuit over the rated residual operating current, at most", 30, "%", Sources.StandingLeakage);
}
