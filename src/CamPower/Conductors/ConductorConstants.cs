namespace CamPower.Conductors;

/// <summary>The cited numbers behind the conductors.</summary>
public static class ConductorConstants
{
    /// <summary>Resistivity of annealed copper of 100 % IACS at 20 °C: 1/58. [Ω·mm²/m]</summary>
    public static CitedValue AnnealedCopperResistivity { get; } =
        new("Resistivity of annealed copper at 20 °C", 1.0 / 58, "Ω·mm²/m", Sources.AnnealedCopper);

    /// <summary>Temperature coefficient of annealed copper at 20 °C. [1/K]</summary>
    public static CitedValue AnnealedCopperCoefficient { get; } =
        new("Temperature coefficient of annealed copper at 20 °C", 0.00393, "1/K", Sources.AnnealedCopper);

    /// <summary>Temperature coefficient of electrical-conductor aluminium, 61 % IACS, at 20 °C. [1/K]</summary>
    public static CitedValue AluminiumCoefficient { get; } =
        new("Temperature coefficient of conductor aluminium at 20 °C", 0.00403, "1/K", Sources.ConductorAluminium);

    /// <summary>Conductivity of electrical-conductor aluminium. [% IACS]</summary>
    public static CitedValue AluminiumConductivity { get; } =
        new("Conductivity of conductor aluminium", 61, "% IACS", Sources.ConductorAluminium);

    /// <summary>Least conductivity of copper-clad aluminium with 10 % copper by volume. [% IACS]</summary>
    public static CitedValue CopperClad10Conductivity { get; } =
        new("Minimum conductivity of copper-clad aluminium, 10 % copper", 62.9, "% IACS", Sources.CopperCladAluminium);

    /// <summary>Least conductivity of copper-clad aluminium with 15 % copper by volume. [% IACS]</summary>
    public static CitedValue CopperClad15Conductivity { get; } =
        new("Minimum conductivity of copper-clad aluminium, 15 % copper", 64.4, "% IACS", Sources.CopperCladAluminium);

    /// <summary>Temperature coefficient of copper-clad aluminium with 10 % copper by volume, at 20 °C. [1/K]</summary>
    public static CitedValue CopperClad10Coefficient { get; } =
        new("Temperature coefficient of copper-clad aluminium, 10 % copper", CladCoefficient(0.10), "1/K", Sources.CladMixture);

    /// <summary>Temperature coefficient of copper-clad aluminium with 15 % copper by volume, at 20 °C. [1/K]</summary>
    public static CitedValue CopperClad15Coefficient { get; } =
        new("Temperature coefficient of copper-clad aluminium, 15 % copper", CladCoefficient(0.15), "1/K", Sources.CladMixture);

    /// <summary>Diameter of 36 AWG. [mm]</summary>
    public static CitedValue Awg36Diameter { get; } =
        new("Diameter of 36 AWG", 0.127, "mm", Sources.AmericanWireGauge);

    /// <summary>Ratio of the diameters of 4/0 and 36 AWG, which lie 39 steps apart. [1]</summary>
    public static CitedValue AwgDiameterRatio { get; } =
        new("Diameter of 4/0 AWG over that of 36 AWG, 39 steps apart", 92, "1", Sources.AmericanWireGauge);

    /// <summary>Added resistance of a class B concentric-lay conductor over a solid one of the same area. [1]</summary>
    public static CitedValue ClassBLay { get; } =
        new("Resistance of a class B stranded conductor over a solid one", 1.02, "1", Sources.ConcentricLay);

    /// <summary>Lowest temperature at which the linear model of resistance is used. [°C]</summary>
    public static CitedValue LinearModelFrom { get; } =
        new("Lowest temperature of the linear resistance model", -60, "°C", Sources.LinearTemperatureRange);

    /// <summary>Highest temperature at which the linear model of resistance is used. [°C]</summary>
    public static CitedValue LinearModelTo { get; } =
        new("Highest temperature of the linear resistance model", 250, "°C", Sources.LinearTemperatureRange);

    // Conductances in parallel add, so the coefficient is their mean weighted by volume share × conductivity.
    private static double CladCoefficient(double copperShare)
    {
        double copper = copperShare * 100, aluminium = (1 - copperShare) * AluminiumConductivity.Value;
        return ((copper * AnnealedCopperCoefficient.Value) + (aluminium * AluminiumCoefficient.Value)) / (copper + aluminium);
    }
}
