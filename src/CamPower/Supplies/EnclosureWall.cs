using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>Thermal data of the sheet of an enclosure.</summary>
/// <remarks>Immutable. The same surface is taken inside and outside.</remarks>
/// <example>
/// <code>
/// var blackPaint = new EnclosureWall("black painted steel", emissivity: Ratio.FromPercent(90), solarAbsorptance: Ratio.FromPercent(95));
/// </code>
/// </example>
public sealed class EnclosureWall
{
    /// <summary>Describes a wall.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="emissivity">Share of a black body's heat radiation that its surface gives off, from 0.01 to 1. [1]</param>
    /// <param name="solarAbsorptance">Share of the sunlight on it that its surface takes up, from 0 to 1. [1]</param>
    /// <param name="resistance">Thermal resistance of the sheet itself, its thickness over its conductivity, from 0 to 10 m²·K/W; null for
    /// metal, where it does not count. [m²·K/W]</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public EnclosureWall(string name, Ratio emissivity, Ratio solarAbsorptance, ThermalResistance? resistance = null)
    {
        Name = Require.Name(name, nameof(name));
        EmissivityShare = Require.Within(emissivity.DecimalFractions, 0.01, 1, nameof(emissivity), "");
        AbsorptanceShare = Require.Within(solarAbsorptance.DecimalFractions, 0, 1, nameof(solarAbsorptance), "");
        double r = (resistance ?? ThermalResistance.Zero).SquareMeterKelvinsPerWatt;
        SquareMeterKelvinsPerWatt = Require.Within(r, 0, 10, nameof(resistance), "m²·K/W");
        Emissivity = emissivity;
        SolarAbsorptance = solarAbsorptance;
        Resistance = resistance;
    }

    /// <summary>Sheet steel with a coat of light gray paint or powder, inside and outside.</summary>
    /// <remarks>Sources: <see cref="Sources.PaintEmissivity"/>, <see cref="Sources.LightGrayAbsorptance"/>.</remarks>
    public static EnclosureWall PaintedSteel { get; } =
        Of("painted steel", SupplyConstants.PaintEmissivity, SupplyConstants.LightGrayAbsorptance);

    /// <summary>Bare galvanized sheet steel that has lost its gloss.</summary>
    /// <remarks>Source: <see cref="Sources.GalvanizedSurface"/>.
    /// New and bright it radiates half as much.</remarks>
    public static EnclosureWall GalvanizedSteel { get; } =
        Of("galvanized steel", SupplyConstants.GalvanizedEmissivity, SupplyConstants.GalvanizedAbsorptance);

    /// <summary>Bare galvanized sheet steel, new and bright: the hottest inside of those given.</summary>
    /// <remarks>Source: <see cref="Sources.GalvanizedSurface"/>.</remarks>
    public static EnclosureWall NewGalvanizedSteel { get; } =
        Of("new galvanized steel", SupplyConstants.NewGalvanizedEmissivity, SupplyConstants.NewGalvanizedAbsorptance);

    /// <summary>Light gray plastic, 3 mm thick.</summary>
    /// <remarks>Sources: <see cref="Sources.PlasticEnclosure"/>, <see cref="Sources.LightGrayAbsorptance"/>.</remarks>
    public static EnclosureWall Plastic { get; } = Of("plastic", SupplyConstants.PlasticEmissivity, SupplyConstants.LightGrayAbsorptance,
        SupplyConstants.PlasticThickness.Value / 1000 / SupplyConstants.PlasticConductivity.Value);

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Share of a black body's heat radiation that its surface gives off.</summary>
    public Ratio Emissivity { get; }

    /// <summary>Share of the sunlight on it that its surface takes up.</summary>
    public Ratio SolarAbsorptance { get; }

    /// <summary>Thermal resistance of the sheet itself; null where it does not count. [m²·K/W]</summary>
    public ThermalResistance? Resistance { get; }

    internal double EmissivityShare { get; }

    internal double AbsorptanceShare { get; }

    internal double SquareMeterKelvinsPerWatt { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    private static EnclosureWall Of(string name, CitedValue emissivity, CitedValue absorptance, double? squareMeterKelvinsPerWatt = null) =>
        new(
        name, Ratio.FromDecimalFractions(emissivity.Value), Ratio.FromDecimalFractions(absorptance.Value),
        squareMeterKelvinsPerWatt is double r ? ThermalResistance.FromSquareMeterKelvinsPerWatt(r) : null);
}
