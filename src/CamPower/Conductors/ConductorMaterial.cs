using System;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>What a conductor is made of: resistivity at 20 °C and how it changes with temperature.</summary>
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
    private const double OhmMeterPerOhmSquareMillimeterPerMeter = 1e-6;

    /// <summary>Describes a material.</summary>
    /// <param name="name">How it is called. Not empty.</param>
    /// <param name="resistivityAt20C">Resistivity at 20 °C, above 0. [Ω·m]</param>
    /// <param name="temperatureCoefficientAt20C">Temperature coefficient of resistance, α₂₀. [1/K]</param>
    /// <param name="validFrom">Lowest temperature of the linear model. [any temperature unit]</param>
    /// <param name="validTo">Highest temperature of the linear model, above <paramref name="validFrom"/>.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number breaks its range, or the resistivity would not
    /// stay above 0 between the two temperatures.</exception>
    public ConductorMaterial(string name, ElectricResistivity resistivityAt20C, double temperatureCoefficientAt20C,
        Temperature validFrom, Temperature validTo, Citation source)
    {
        Name = Require.Name(name, nameof(name));
        OhmMetersAt20C = Require.Positive(resistivityAt20C.OhmMeters, nameof(resistivityAt20C), "Ω·m");
        TemperatureCoefficientAt20C = Require.Finite(temperatureCoefficientAt20C, nameof(temperatureCoefficientAt20C), "1/K");
        ValidFromCelsius = Require.Finite(Celsius.Of(validFrom), nameof(validFrom), "°C");
        ValidToCelsius = Require.Finite(Celsius.Of(validTo), nameof(validTo), "°C");
        Source = Require.NotNull(source, nameof(source));
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
    public static ConductorMaterial AnnealedCopper { get; } = Linear("annealed copper",
        ConductorConstants.AnnealedCopperResistivity.Value, ConductorConstants.AnnealedCopperCoefficient);

    /// <summary>Copper-clad aluminium with 10 % copper by volume, at its standard's minimum conductivity.</summary>
    /// <remarks>59 % more resistive than copper, and sold in the same jacket.</remarks>
    public static ConductorMaterial CopperCladAluminium10 { get; } = Clad("copper-clad aluminium 10 %",
        ConductorConstants.CopperClad10Conductivity, ConductorConstants.CopperClad10Coefficient);

    /// <summary>Copper-clad aluminium with 15 % copper by volume, at its standard's minimum conductivity.</summary>
    /// <remarks>55 % more resistive than copper, and sold in the same jacket.</remarks>
    public static ConductorMaterial CopperCladAluminium15 { get; } = Clad("copper-clad aluminium 15 %",
        ConductorConstants.CopperClad15Conductivity, ConductorConstants.CopperClad15Coefficient);

    /// <summary>How it is called.</summary>
    public string Name { get; }

    /// <summary>Resistivity at 20 °C. [Ω·m]</summary>
    public ElectricResistivity ResistivityAt20C => ElectricResistivity.FromOhmMeters(OhmMetersAt20C);

    /// <summary>Temperature coefficient of resistance at 20 °C, α₂₀. [1/K]</summary>
    public double TemperatureCoefficientAt20C { get; }

    /// <summary>Lowest temperature at which the linear model is used. [°C]</summary>
    public Temperature ValidFrom => Temperature.FromDegreesCelsius(ValidFromCelsius);

    /// <summary>Highest temperature at which the linear model is used. [°C]</summary>
    public Temperature ValidTo => Temperature.FromDegreesCelsius(ValidToCelsius);

    /// <summary>Where the numbers come from.</summary>
    public Citation Source { get; }

    /// <summary>Whether it is aluminium under a copper skin, which the eye takes for copper.</summary>
    public bool IsCopperClad { get; private init; }

    internal double OhmMetersAt20C { get; }

    internal double ValidFromCelsius { get; }

    internal double ValidToCelsius { get; }

    /// <summary>Resistivity at a temperature. [Ω·m]</summary>
    /// <param name="temperature">Temperature of the conductor, from <see cref="ValidFrom"/> to <see cref="ValidTo"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside the model's range.</exception>
    public ElectricResistivity ResistivityAt(Temperature temperature)
    {
        double celsius = Require.Within(Celsius.Of(temperature), ValidFromCelsius, ValidToCelsius, nameof(temperature), "°C");
        return ElectricResistivity.FromOhmMeters(OhmMetersAt20C * RelativeResistivity(celsius));
    }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    private double RelativeResistivity(double celsius) => 1 + (TemperatureCoefficientAt20C * (celsius - Celsius.Reference));

    private static ConductorMaterial Clad(string name, CitedValue conductivity, CitedValue coefficient) =>
        Linear(name, ConductorConstants.AnnealedCopperResistivity.Value * 100 / conductivity.Value, coefficient,
            conductivity.Source, copperClad: true);

    private static ConductorMaterial Linear(string name, double ohmSquareMillimetersPerMeter, CitedValue coefficient,
        Citation? source = null, bool copperClad = false) => new(
        name,
        ElectricResistivity.FromOhmMeters(ohmSquareMillimetersPerMeter * OhmMeterPerOhmSquareMillimeterPerMeter),
        coefficient.Value,
        Temperature.FromDegreesCelsius(ConductorConstants.LinearModelFrom.Value),
        Temperature.FromDegreesCelsius(ConductorConstants.LinearModelTo.Value),
        source ?? coefficient.Source)
    { IsCopperClad = copperClad };
}
