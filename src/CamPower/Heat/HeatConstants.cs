namespace CamPower.Heat;

/// <summary>The cited numbers behind the heat of an enclosure.</summary>
internal static class HeatConstants
{
    /// <summary>Stefan's and Boltzmann's constant. [W/(m²·K⁴)]</summary>
    internal static CitedValue StefanBoltzmann { get; } =
        new("Stefan-Boltzmann constant", 5.670374419e-8, "W/(m²·K⁴)", Sources.StefanBoltzmann);

    /// <summary>Standard acceleration of free fall. [m/s²]</summary>
    internal static CitedValue Gravity { get; } =
        new("Standard acceleration of free fall", 9.80665, "m/s²", Sources.StandardAtmosphere);

    /// <summary>Pressure of the air at sea level. [Pa]</summary>
    internal static CitedValue Pressure { get; } =
        new("Standard pressure at sea level", 101325, "Pa", Sources.StandardAtmosphere);

    /// <summary>Gas constant of dry air. [J/(kg·K)]</summary>
    internal static CitedValue AirGasConstant { get; } =
        new("Gas constant of dry air", 287.05287, "J/(kg·K)", Sources.StandardAtmosphere);

    /// <summary>Specific heat of air at constant pressure. [J/(kg·K)]</summary>
    internal static CitedValue AirSpecificHeat { get; } =
        new("Specific heat of air at constant pressure", 1007, "J/(kg·K)", Sources.AirHeat);

    /// <summary>Viscosity of air at 273 K. [Pa·s]</summary>
    internal static CitedValue AirViscosity { get; } =
        new("Viscosity of air at 273 K", 1.716e-5, "Pa·s", Sources.AirTransport);

    /// <summary>Sutherland's temperature of the viscosity of air. [K]</summary>
    internal static CitedValue AirViscositySutherland { get; } =
        new("Sutherland temperature of the viscosity of air", 111, "K", Sources.AirTransport);

    /// <summary>Thermal conductivity of air at 273 K. [W/(m·K)]</summary>
    internal static CitedValue AirConductivity { get; } =
        new("Thermal conductivity of air at 273 K", 0.0241, "W/(m·K)", Sources.AirTransport);

    /// <summary>Sutherland's temperature of the conductivity of air. [K]</summary>
    internal static CitedValue AirConductivitySutherland { get; } =
        new("Sutherland temperature of the conductivity of air", 194, "K", Sources.AirTransport);

    /// <summary>Temperature of the two values of Sutherland's law. [K]</summary>
    internal static CitedValue AirReference { get; } =
        new("Reference temperature of Sutherland's law for air", 273, "K", Sources.AirTransport);

    /// <summary>Shortest side of an enclosure for which the model was held against other figures. [m]</summary>
    internal static CitedValue ShortestSide { get; } =
        new("Shortest side of a modeled enclosure", 0.1, "m", Sources.EnclosureRange);

    /// <summary>Longest side of an enclosure for which the model was held against other figures. [m]</summary>
    internal static CitedValue LongestSide { get; } =
        new("Longest side of a modeled enclosure", 2, "m", Sources.EnclosureRange);

    /// <summary>Coldest air for which the model was held against other figures. [K]</summary>
    internal static CitedValue ColdestAir { get; } =
        new("Coldest air of a modeled enclosure", 200, "K", Sources.EnclosureRange);

    /// <summary>Hottest air for which the model was held against other figures. [K]</summary>
    internal static CitedValue HottestAir { get; } =
        new("Hottest air of a modeled enclosure", 400, "K", Sources.EnclosureRange);

    /// <summary>Uncertainty of the calculated temperature in an enclosure, in percent of its rise. [%]</summary>
    internal static CitedValue ModelUncertainty { get; } =
        new("Uncertainty of the temperature in a modeled enclosure, share of its rise", 25, "%", Sources.EnclosureRange);

    /// <summary>Shortest time in which a load warms an enclosure by more than the model may be off. [min]</summary>
    public static CitedValue WarmingFrom { get; } =
        new("Shortest time in which a load warms an enclosure", 5, "min", Sources.EnclosureWarming);

    /// <summary>The strongest sunlight that equipment is tested with. [W/m²]</summary>
    internal static CitedValue PeakSun { get; } =
        new("Sunlight square to its direction, peak", 1120, "W/m²", Sources.PeakSun);
}
