namespace CamPower.Conductors;

/// <summary>The cited numbers behind the conductors.</summary>
internal static class ConductorConstants
{
    /// <summary>Resistivity of annealed copper of 100 % IACS at 20 °C: 1/58. [Ω·mm²/m]</summary>
    internal static CitedValue AnnealedCopperResistivity { get; } =
        new("Resistivity of annealed copper at 20 °C", 1.0 / 58, "Ω·mm²/m", Sources.AnnealedCopper);

    /// <summary>Temperature coefficient of annealed copper at 20 °C. [1/K]</summary>
    internal static CitedValue AnnealedCopperCoefficient { get; } =
        new("Temperature coefficient of annealed copper at 20 °C", 0.00393, "1/K", Sources.AnnealedCopper);

    /// <summary>Density of copper at 20 °C. [kg/m³]</summary>
    internal static CitedValue CopperDensity { get; } =
        new("Density of annealed copper at 20 °C", 8890, "kg/m³", Sources.CopperHeat);

    /// <summary>Specific heat of copper at room temperature. [J/(kg·K)]</summary>
    internal static CitedValue CopperSpecificHeat { get; } =
        new("Specific heat of copper at room temperature", 390, "J/(kg·K)", Sources.CopperHeat);

    /// <summary>Least conductivity of hard-drawn copper wire below 0.325 in. [% IACS]</summary>
    internal static CitedValue HardDrawnCopperConductivity { get; } =
        new("Minimum conductivity of hard-drawn copper below 0.325 in", 96.16, "% IACS", Sources.HardDrawnCopper);

    /// <summary>Temperature coefficient of hard-drawn copper at 20 °C: that of annealed copper times its share of the conductivity.
    /// [1/K]</summary>
    internal static CitedValue HardDrawnCopperCoefficient { get; } = new("Temperature coefficient of hard-drawn copper at 20 °C",
        AnnealedCopperCoefficient.Value * HardDrawnCopperConductivity.Value / 100, "1/K", Sources.ProportionalCoefficient);

    /// <summary>Temperature coefficient of electrical-conductor aluminum, 61 % IACS, at 20 °C. [1/K]</summary>
    internal static CitedValue AluminumCoefficient { get; } =
        new("Temperature coefficient of conductor aluminum at 20 °C", 0.00403, "1/K", Sources.ConductorAluminum);

    /// <summary>Conductivity of electrical-conductor aluminum. [% IACS]</summary>
    internal static CitedValue AluminumConductivity { get; } =
        new("Conductivity of conductor aluminum", 61, "% IACS", Sources.ConductorAluminum);

    /// <summary>Density of electrical-conductor aluminum at 20 °C. [kg/m³]</summary>
    internal static CitedValue AluminumDensity { get; } =
        new("Density of conductor aluminum at 20 °C", 2703, "kg/m³", Sources.ConductorAluminum);

    /// <summary>Specific heat of aluminum at 20 °C: 2.5 MJ/(m³·K) over its density. [J/(kg·K)]</summary>
    internal static CitedValue AluminumSpecificHeat { get; } =
        new("Specific heat of conductor aluminum at 20 °C", 2.5e6 / AluminumDensity.Value, "J/(kg·K)", Sources.AluminumHeat);

    /// <summary>Least conductivity of copper-clad aluminum with 10 % copper by volume. [% IACS]</summary>
    internal static CitedValue CopperClad10Conductivity { get; } =
        new("Minimum conductivity of copper-clad aluminum, 10 % copper", 62.9, "% IACS", Sources.CopperCladAluminum);

    /// <summary>Least conductivity of copper-clad aluminum with 15 % copper by volume. [% IACS]</summary>
    internal static CitedValue CopperClad15Conductivity { get; } =
        new("Minimum conductivity of copper-clad aluminum, 15 % copper", 64.4, "% IACS", Sources.CopperCladAluminum);

    /// <summary>Temperature coefficient of copper-clad aluminum with 10 % copper by volume, at 20 °C. [1/K]</summary>
    internal static CitedValue CopperClad10Coefficient { get; } =
        new("Temperature coefficient of copper-clad aluminum, 10 % copper", CladCoefficient(0.10), "1/K", Sources.CladMixture);

    /// <summary>Temperature coefficient of copper-clad aluminum with 15 % copper by volume, at 20 °C. [1/K]</summary>
    internal static CitedValue CopperClad15Coefficient { get; } =
        new("Temperature coefficient of copper-clad aluminum, 15 % copper", CladCoefficient(0.15), "1/K", Sources.CladMixture);

    /// <summary>Density of copper-clad aluminum with 10 % copper by volume. [kg/m³]</summary>
    internal static CitedValue CopperClad10Density { get; } =
        new("Density of copper-clad aluminum, 10 % copper", CladDensity(0.10), "kg/m³", Sources.CladMixture);

    /// <summary>Density of copper-clad aluminum with 15 % copper by volume. [kg/m³]</summary>
    internal static CitedValue CopperClad15Density { get; } =
        new("Density of copper-clad aluminum, 15 % copper", CladDensity(0.15), "kg/m³", Sources.CladMixture);

    /// <summary>Specific heat of copper-clad aluminum with 10 % copper by volume. [J/(kg·K)]</summary>
    internal static CitedValue CopperClad10SpecificHeat { get; } =
        new("Specific heat of copper-clad aluminum, 10 % copper", CladSpecificHeat(0.10), "J/(kg·K)", Sources.CladMixture);

    /// <summary>Specific heat of copper-clad aluminum with 15 % copper by volume. [J/(kg·K)]</summary>
    internal static CitedValue CopperClad15SpecificHeat { get; } =
        new("Specific heat of copper-clad aluminum, 15 % copper", CladSpecificHeat(0.15), "J/(kg·K)", Sources.CladMixture);

    /// <summary>Conductivity of copper-clad steel of grade 21. [% IACS]</summary>
    internal static CitedValue CopperCladSteel21Conductivity { get; } =
        new("Conductivity of copper-clad steel, grade 21", 21, "% IACS", Sources.CopperCladSteel);

    /// <summary>Conductivity of copper-clad steel of grade 30. [% IACS]</summary>
    internal static CitedValue CopperCladSteel30Conductivity { get; } =
        new("Conductivity of copper-clad steel, grade 30", 30, "% IACS", Sources.CopperCladSteel);

    /// <summary>Conductivity of copper-clad steel of grade 40. [% IACS]</summary>
    internal static CitedValue CopperCladSteel40Conductivity { get; } =
        new("Conductivity of copper-clad steel, grade 40", 40, "% IACS", Sources.CopperCladSteel);

    /// <summary>Temperature coefficient of copper-clad steel at 20 °C. [1/K]</summary>
    internal static CitedValue CopperCladSteelCoefficient { get; } =
        new("Temperature coefficient of copper-clad steel at 20 °C", 0.00378, "1/K", Sources.CopperCladSteelTemperature);

    /// <summary>Diameter of 36 AWG. [mm]</summary>
    internal static CitedValue Awg36Diameter { get; } =
        new("Diameter of 36 AWG", 0.127, "mm", Sources.AmericanWireGauge);

    /// <summary>Ratio of the diameters of 4/0 and 36 AWG, which lie 39 steps apart. [1]</summary>
    internal static CitedValue AwgDiameterRatio { get; } =
        new("Diameter of 4/0 AWG over that of 36 AWG, 39 steps apart", 92, "1", Sources.AmericanWireGauge);

    /// <summary>Added resistance of a class B concentric-lay conductor over a solid one of the same area. [1]</summary>
    internal static CitedValue ClassBLay { get; } =
        new("Resistance of a class B stranded conductor over a solid one", 1.02, "1", Sources.ConcentricLay);

    /// <summary>Area of a thousand circular mils: a thousand circles of 0.001 in. [mm²]</summary>
    internal static CitedValue KcmilArea { get; } =
        new("Area of 1 kcmil", 1000 * System.Math.PI / 4 * 0.0254 * 0.0254, "mm²", Sources.CircularMil);

    /// <summary>Added resistance of a flexible conductor, bunched or rope-laid, over a solid one of the same area. [1]</summary>
    internal static CitedValue FlexibleLay { get; } =
        new("Resistance of a flexible conductor over a solid one", 1.04, "1", Sources.FlexibleLay);

    /// <summary>Resistance of one crimped contact. [Ω]</summary>
    internal static CitedValue CrimpResistance { get; } = new("Resistance of one crimped contact", 0.001, "Ω", Sources.ContactResistance);

    /// <summary>Resistance of one twist-on connection. [Ω]</summary>
    internal static CitedValue TwistOnResistance { get; } =
        new("Resistance of one twist-on connection", 0.002, "Ω", Sources.ContactResistance);

    /// <summary>Resistance of one screw terminal. [Ω]</summary>
    internal static CitedValue ScrewTerminalResistance { get; } =
        new("Resistance of one screw terminal", 0.002, "Ω", Sources.ContactResistance);

    /// <summary>Resistance of one gel-filled displacement splice. [Ω]</summary>
    internal static CitedValue GelSpliceResistance { get; } =
        new("Resistance of one gel-filled splice", 0.005, "Ω", Sources.ContactResistance);

    /// <summary>Resistance of one contact of a barrel plug in its jack. [Ω]</summary>
    internal static CitedValue BarrelContactResistance { get; } =
        new("Resistance of one contact of a barrel plug", 0.03, "Ω", Sources.ContactResistance);

    /// <summary>The most current that a barrel plug is rated for by any maker. [A]</summary>
    internal static CitedValue BarrelMostAmperes { get; } = new("Rated current of a barrel plug, at most", 5, "A", Sources.CommonBarrel);

    /// <summary>Resistance of the shield of a common 75 Ω coaxial cable with a 95 % copper braid, per 1000 ft at 20 °C. [Ω/1000
    /// ft]</summary>
    internal static CitedValue CoaxShieldResistance { get; } =
        new("Shield of a 75 Ω coaxial cable, 95 % copper braid, at 20 °C", 2.6, "Ω/1000 ft", Sources.CoaxConstruction);

    /// <summary>Growth of resistance by self-heating from which on it is said to matter. [%]</summary>
    internal static CitedValue SelfHeatingMatters { get; } =
        new("Growth of resistance by self-heating from which on it matters", 1, "%", Sources.SelfHeatingPolicy);

    /// <summary>Smallest conductor whose heat is estimated from that of a larger one. [AWG]</summary>
    internal static CitedValue ThinnestEstimated { get; } =
        new("Smallest conductor whose heat is estimated from that of a larger one", 28, "AWG", Sources.SmallConductor);

    /// <summary>Share of its largest protective device that 18 and 16 AWG may carry continuously: 5.6 A of 7 A, 8 A of 10 A. [%]</summary>
    internal static CitedValue ContinuousShareOfSmallConductors { get; } =
        new("Continuous load of 18 and 16 AWG over their largest protective device", 80, "%", Sources.NecSmallConductorsFromMemory);

    /// <summary>Lowest temperature at which the linear model of resistance is used. [°C]</summary>
    internal static CitedValue LinearModelFrom { get; } =
        new("Lowest temperature of the linear resistance model", -60, "°C", Sources.LinearTemperatureRange);

    /// <summary>Highest temperature at which the linear model of resistance is used. [°C]</summary>
    internal static CitedValue LinearModelTo { get; } =
        new("Highest temperature of the linear resistance model", 250, "°C", Sources.LinearTemperatureRange);

    /// <summary>The constant of copper in the adiabatic formula, at 0 °C. [A·s^½/mm²]</summary>
    internal static CitedValue CopperAdiabatic { get; } =
        new("Constant K of copper in the adiabatic formula", 226, "A·s^½/mm²", Sources.Iec60949);

    /// <summary>The constant of aluminum in the adiabatic formula, at 0 °C. [A·s^½/mm²]</summary>
    internal static CitedValue AluminumAdiabatic { get; } =
        new("Constant K of aluminum in the adiabatic formula", 148, "A·s^½/mm²", Sources.Iec60949);

    /// <summary>Temperature below 0 °C at which the linear model of copper has no resistance. [°C]</summary>
    internal static CitedValue CopperBeta { get; } =
        new("Reciprocal temperature coefficient of copper at 0 °C", 234.5, "°C", Sources.Iec60949);

    /// <summary>Temperature below 0 °C at which the linear model of aluminum has no resistance. [°C]</summary>
    internal static CitedValue AluminumBeta { get; } =
        new("Reciprocal temperature coefficient of aluminum at 0 °C", 228, "°C", Sources.Iec60949AluminumBeta);

    /// <summary>The longest overcurrent during which no heat is taken to leave the conductor. [s]</summary>
    internal static CitedValue LongestAdiabatic { get; } =
        new("Longest fault of the adiabatic formula", 5, "s", Sources.AdiabaticWithstand);

    // Conductances in parallel add, so the coefficient is their mean weighted by volume share × conductivity.
    private static double CladCoefficient(double copperShare)
    {
        double copper = copperShare * 100, aluminum = (1 - copperShare) * AluminumConductivity.Value;
        return ((copper * AnnealedCopperCoefficient.Value) + (aluminum * AluminumCoefficient.Value)) / (copper + aluminum);
    }

    private static double CladDensity(double copperShare) =>
        (copperShare * CopperDensity.Value) + ((1 - copperShare) * AluminumDensity.Value);

    // Heat goes by mass.
    private static double CladSpecificHeat(double copperShare)
    {
        double copper = copperShare * CopperDensity.Value, aluminum = (1 - copperShare) * AluminumDensity.Value;
        return ((copper * CopperSpecificHeat.Value) + (aluminum * AluminumSpecificHeat.Value)) / (copper + aluminum);
    }
}
