namespace CamPower.Supplies;

/// <summary>The cited numbers behind the supplies.</summary>
public static class SupplyConstants
{
    /// <summary>Lowest ambient of the generic derating curve. [°C]</summary>
    public static CitedValue GenericFrom { get; } =
        new("Lowest ambient of a generic enclosed supply", -20, "°C", Sources.GenericDerating);

    /// <summary>Highest ambient at which a generic enclosed supply gives its full rating. [°C]</summary>
    public static CitedValue GenericFullTo { get; } =
        new("Highest ambient at which a generic enclosed supply keeps its full rating", 50, "°C", Sources.GenericDerating);

    /// <summary>Highest ambient of the generic derating curve. [°C]</summary>
    public static CitedValue GenericTo { get; } =
        new("Highest ambient of a generic enclosed supply", 70, "°C", Sources.GenericDerating);

    /// <summary>Share of the rating at the highest ambient of the generic curve: 2.5 % lost per kelvin above 50 °C. [%]</summary>
    public static CitedValue GenericShareAtHighest { get; } =
        new("Share of its rating that a generic enclosed supply keeps at its highest ambient", 50, "%", Sources.GenericDerating);

    /// <summary>Altitude up to which a generic supply keeps its ambient rating. [m]</summary>
    public static CitedValue GenericAltitudeFrom { get; } =
        new("Altitude up to which a generic supply keeps its ambient rating", 2000, "m", Sources.GenericAltitudeDerating);

    /// <summary>By how much warmer the air counts for every 1000 m above that. [K]</summary>
    public static CitedValue GenericAltitudeRise { get; } =
        new("By how much warmer the air counts to a generic supply for every 1000 m above that", 5, "K", Sources.GenericAltitudeDerating);
}
