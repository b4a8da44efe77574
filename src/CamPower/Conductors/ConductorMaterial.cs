using System;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>Metal of a conductor: its resistivity at 20 °C and the change with temperature.</summary>
/// <remarks>
/// Immutable. Resistivity is linear in temperature, ρ(T) = ρ₂₀ (1 + α₂₀ (T − 20 °C)), inside a stated range;
/// outside it a temperature is refused. Source of the model: <see cref="Sources.LinearTemperature"/>.
/// </remarks>
/// <example>
/// <code>
/// ElectricResistivity hot = ConductorMaterial.AnnealedCopper.ResistivityAt(Temperature.FromDegreesCelsius(75));
/// </code>
/// </example>
public sealed class ConductorMaterial
{
    private const double OhmMeterPerOhmSquareMillimeterPerMeter = 1e-6, FullConductivity = 100;

    /// <summary>Describes a material.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="resistivityAt20C">Resistivity at 20 °C, above 0. [Ω·m]</param>
    /// <param name="temperatureCoefficientAt20C">Temperature coefficient of resistance, α₂₀. [1/K]</param>
    /// <param name="validFrom">Lowest temperature of the linear model. [any temperature unit]</param>
    /// <param name="validTo">Highest temperature of the linear model, above <paramref name="validFrom"/>.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <param name="density">Density, above 0; null where it is not known. [kg/m³]</param>
    /// <param name="specificHeat">Specific heat, above 0; null where it is not known. [J/(kg·K)]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number breaks its range, or the resistivity would not
    /// stay above 0 between the two temperatures.</exception>
    public ConductorMaterial(string name, ElectricResistivity resistivityAt20C, double temperatureCoefficientAt20C,
        Temperature validFrom, Temperature validTo, Citation source, Density? density = null, SpecificEntropy? specificHeat = null)
    {
        Name = Require.Name(name, nameof(name));
        OhmMetersAt20C = Require.Positive(resistivityAt20C.OhmMeters, nameof(resistivityAt20C), "Ω·m");
        TemperatureCoefficientAt20C = Require.Finite(temperatureCoefficientAt20C, nameof(temperatureCoefficientAt20C), "1/K");
        ValidFromCelsius = Require.Finite(Celsius.Of(validFrom), nameof(validFrom), "°C");
        ValidToCelsius = Require.Finite(Celsius.Of(validTo), nameof(validTo), "°C");
        Source = Require.NotNull(source, nameof(source));
        if (density is Density mass) Require.Positive(mass.KilogramsPerCubicMeter, nameof(density), "kg/m³");
        if (specificHeat is SpecificEntropy heat) Require.Positive(heat.JoulesPerKilogramKelvin, nameof(specificHeat), "J/(kg·K)");
        Density = density;
        SpecificHeat = specificHeat;
        JoulesPerCubicMeterKelvin = density?.KilogramsPerCubicMeter * specificHeat?.JoulesPerKilogramKelvin ?? double.NaN;
        if (ValidToCelsius <= ValidFromCelsius)
        {
            throw Require.OutOfRange(ValidToCelsius, nameof(validTo), "°C", FormattableString.Invariant($"above {ValidFromCelsius}"));
        }

        double least = Math.Min(RelativeResistivity(ValidFromCelsius), RelativeResistivity(ValidToCelsius));
        if (least <= 0)
        {
            throw Require.OutOfRange(TemperatureCoefficientAt20C, nameof(temperatureCoefficientAt20C), "1/K",
                "such that the resistivity stays positive in the whole range of temperature");
        }
    }

    /// <summary>Annealed copper of 100 % IACS, 1/58 Ω·mm²/m at 20 °C, bare or uncoated.</summary>
    public static ConductorMaterial AnnealedCopper { get; } = OfConductivity("annealed copper", FullConductivity,
        ConductorConstants.AnnealedCopperCoefficient, Sources.AnnealedCopper, ConductorConstants.CopperDensity,
            ConductorConstants.CopperSpecificHeat);

    /// <summary>Hard-drawn copper below 0.325 in, at its standard's minimum conductivity.</summary>
    /// <remarks>4 % more resistive than annealed copper; found in overhead wire and in some solid cores.</remarks>
    public static ConductorMaterial HardDrawnCopper { get; } =
        OfConductivity("hard-drawn copper", ConductorConstants.HardDrawnCopperConductivity.Value,
        ConductorConstants.HardDrawnCopperCoefficient, Sources.HardDrawnCopper, ConductorConstants.CopperDensity,
            ConductorConstants.CopperSpecificHeat);

    /// <summary>Electrical-conductor aluminum of 61 % IACS.</summary>
    public static ConductorMaterial Aluminum { get; } = OfConductivity("aluminum", ConductorConstants.AluminumConductivity.Value,
        ConductorConstants.AluminumCoefficient, Sources.ConductorAluminum, ConductorConstants.AluminumDensity,
            ConductorConstants.AluminumSpecificHeat);

    /// <summary>Copper-clad aluminum with 10 % copper by volume, at its standard's minimum conductivity.</summary>
    /// <remarks>59 % more resistive than copper, and sold in the same jacket.</remarks>
    public static ConductorMaterial CopperCladAluminum10 { get; } = CladAluminum("copper-clad aluminum 10 %",
        ConductorConstants.CopperClad10Conductivity, ConductorConstants.CopperClad10Coefficient,
        ConductorConstants.CopperClad10Density, ConductorConstants.CopperClad10SpecificHeat);

    /// <summary>Copper-clad aluminum with 15 % copper by volume, at its standard's minimum conductivity.</summary>
    /// <remarks>55 % more resistive than copper, and sold in the same jacket.</remarks>
    public static ConductorMaterial CopperCladAluminum15 { get; } = CladAluminum("copper-clad aluminum 15 %",
        ConductorConstants.CopperClad15Conductivity, ConductorConstants.CopperClad15Coefficient,
        ConductorConstants.CopperClad15Density, ConductorConstants.CopperClad15SpecificHeat);

    /// <summary>Copper-clad steel of grade 21: 21 % IACS.</summary>
    /// <remarks>The center of some coaxial cables, for strength. Density and specific heat are not given: no source is at hand.</remarks>
    public static ConductorMaterial CopperCladSteel21 { get; } =
        CladSteel("copper-clad steel 21 %", ConductorConstants.CopperCladSteel21Conductivity);

    /// <summary>Copper-clad steel of grade 30: 30 % IACS.</summary>
    /// <remarks>The center of some coaxial cables, for strength. Density and specific heat are not given: no source is at hand.</remarks>
    public static ConductorMaterial CopperCladSteel30 { get; } =
        CladSteel("copper-clad steel 30 %", ConductorConstants.CopperCladSteel30Conductivity);

    /// <summary>Copper-clad steel of grade 40: 40 % IACS.</summary>
    /// <remarks>The center of some coaxial cables, for strength. Density and specific heat are not given: no source is at hand.</remarks>
    public static ConductorMaterial CopperCladSteel40 { get; } =
        CladSteel("copper-clad steel 40 %", ConductorConstants.CopperCladSteel40Conductivity);

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Resistivity at 20 °C. [Ω·m]</summary>
    public ElectricResistivity ResistivityAt20C => ElectricResistivity.FromOhmMeters(OhmMetersAt20C);

    /// <summary>Temperature coefficient of resistance at 20 °C, α₂₀. [1/K]</summary>
    public double TemperatureCoefficientAt20C { get; }

    /// <summary>Lowest temperature at which the linear model is used. [°C]</summary>
    public Temperature ValidFrom => Temperature.FromDegreesCelsius(ValidFromCelsius);

    /// <summary>Highest temperature at which the linear model is used. [°C]</summary>
    public Temperature ValidTo => Temperature.FromDegreesCelsius(ValidToCelsius);

    /// <summary>Density, or null where it is not known. Sources of the given ones: the page of sources.</summary>
    public Density? Density { get; }

    /// <summary>Specific heat, or null where it is not known. Sources of the given ones: the page of sources.</summary>
    public SpecificEntropy? SpecificHeat { get; }

    /// <summary>What warms a volume of it by a kelvin; NaN where density or specific heat is not known. [J/(m³·K)]</summary>
    internal double JoulesPerCubicMeterKelvin { get; }

    /// <summary>Where the resistivity comes from.</summary>
    public Citation Source { get; }

    /// <summary>Whether it is aluminum under a copper skin, which the eye takes for copper.</summary>
    public bool IsCopperCladAluminum { get; private init; }

    internal double OhmMetersAt20C { get; }

    internal double ValidFromCelsius { get; }

    internal double ValidToCelsius { get; }

    /// <summary>Resistivity at a temperature. [Ω·m]</summary>
    /// <param name="temperature">Temperature of the conductor, from <see cref="ValidFrom"/> to <see cref="ValidTo"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside the model's range.</exception>
    public ElectricResistivity ResistivityAt(Temperature temperature) =>
        ElectricResistivity.FromOhmMeters(OhmMetersAt20C * RelativeResistivity(CelsiusOf(temperature, nameof(temperature))));

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <summary>A temperature in degrees Celsius, refused outside the range of the linear model.</summary>
    internal double CelsiusOf(Temperature temperature, string parameter) =>
        Celsius.Within(temperature, ValidFromCelsius, ValidToCelsius, parameter);

    internal double RelativeResistivity(double celsius) => 1 + (TemperatureCoefficientAt20C * (celsius - Celsius.Reference));

    private static ConductorMaterial CladAluminum(
        string name, CitedValue conductivity, CitedValue coefficient, CitedValue density, CitedValue specificHeat) =>
        OfConductivity(name, conductivity.Value, coefficient, conductivity.Source, density, specificHeat, copperCladAluminum: true);

    private static ConductorMaterial CladSteel(string name, CitedValue conductivity) =>
        OfConductivity(name, conductivity.Value, ConductorConstants.CopperCladSteelCoefficient, conductivity.Source);

    private static ConductorMaterial OfConductivity(string name, double percentIacs, CitedValue coefficient, Citation source,
        CitedValue? density = null, CitedValue? specificHeat = null, bool copperCladAluminum = false) => new(
        name,
        ElectricResistivity.FromOhmMeters(
            ConductorConstants.AnnealedCopperResistivity.Value * FullConductivity / percentIacs * OhmMeterPerOhmSquareMillimeterPerMeter),
        coefficient.Value,
        Temperature.FromDegreesCelsius(ConductorConstants.LinearModelFrom.Value),
        Temperature.FromDegreesCelsius(ConductorConstants.LinearModelTo.Value),
        source,
        density is null ? null : UnitsNet.Density.FromKilogramsPerCubicMeter(density.Value),
        specificHeat is null ? null : SpecificEntropy.FromJoulesPerKilogramKelvin(specificHeat.Value))
    { IsCopperCladAluminum = copperCladAluminum };
}
