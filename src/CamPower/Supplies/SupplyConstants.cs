namespace CamPower.Supplies;

/// <summary>The cited numbers behind the supplies.</summary>
public static class SupplyConstants
{
    /// <summary>Lowest ambient of the generic derating curve. [°C]</summary>
    public static CitedValue GenericFrom { get; } =
        new("Generic enclosed supply: lowest ambient", -20, "°C", Sources.GenericDerating);

    /// <summary>Highest ambient at which a generic enclosed supply gives its full rating. [°C]</summary>
    public static CitedValue GenericFullTo { get; } =
        new("Generic enclosed supply: full rating up to", 50, "°C", Sources.GenericDerating);

    /// <summary>Highest ambient of the generic derating curve. [°C]</summary>
    public static CitedValue GenericTo { get; } =
        new("Generic enclosed supply: highest ambient", 70, "°C", Sources.GenericDerating);

    /// <summary>Share of the rating at the highest ambient of the generic curve: 2.5 % lost per kelvin above 50 °C. [%]</summary>
    public static CitedValue GenericShareAtHighest { get; } =
        new("Generic enclosed supply: share of the rating at the highest ambient", 50, "%", Sources.GenericDerating);
}
