namespace CamPower.Faults;

/// <summary>The cited numbers behind the faults.</summary>
public static class FaultConstants
{
    /// <summary>The constant of copper in the adiabatic formula, at 0 °C. [A·s^½/mm²]</summary>
    public static CitedValue CopperAdiabatic { get; } =
        new("Constant K of copper in the adiabatic formula", 226, "A·s^½/mm²", Sources.Iec60949);

    /// <summary>The constant of aluminium in the adiabatic formula, at 0 °C. [A·s^½/mm²]</summary>
    public static CitedValue AluminiumAdiabatic { get; } =
        new("Constant K of aluminium in the adiabatic formula", 148, "A·s^½/mm²", Sources.Iec60949);

    /// <summary>Temperature below 0 °C at which the linear model of copper has no resistance. [°C]</summary>
    public static CitedValue CopperBeta { get; } =
        new("Reciprocal temperature coefficient of copper at 0 °C", 234.5, "°C", Sources.Iec60949);

    /// <summary>Temperature below 0 °C at which the linear model of aluminium has no resistance. [°C]</summary>
    public static CitedValue AluminiumBeta { get; } =
        new("Reciprocal temperature coefficient of aluminium at 0 °C", 228, "°C", Sources.Iec60949AluminiumBeta);

    /// <summary>The longest fault for which no heat is taken to leave the conductor. [s]</summary>
    public static CitedValue LongestAdiabatic { get; } =
        new("Longest fault of the adiabatic formula", 5, "s", Sources.AdiabaticWithstand);
}
