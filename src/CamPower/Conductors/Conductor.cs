using System;
using UnitsNet;

namespace CamPower;

/// <summary>One conductor: material, size and stranding.</summary>
/// <remarks>Immutable. Its resistance per length is ρ(T)·k/A, where k is the lay factor of the stranding.
/// Source: <see cref="Sources.Resistance"/>.</remarks>
/// <example>
/// <code>
/// var conductor = new Conductor(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper);
/// LinearResistance perLength = conductor.ResistancePerLengthAt(Temperature.FromDegreesCelsius(20));   // 6.385 Ω/1000 ft
/// </code>
/// </example>
public sealed class Conductor
{
    /// <summary>Describes a conductor.</summary>
    /// <param name="size">Its size; not the default value.</param>
    /// <param name="stranding">How the metal is made up.</param>
    /// <param name="material">What it is made of.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="size"/> is the default value.</exception>
    public Conductor(WireSize size, Stranding stranding, ConductorMaterial material)
    {
        double area = Require.Positive(size.SquareMeters, nameof(size), "m²");
        Size = size;
        Stranding = Require.NotNull(stranding, nameof(stranding));
        Material = Require.NotNull(material, nameof(material));
        OhmsPerMeterAt20C = Material.OhmMetersAt20C * Stranding.LayFactor / area;
    }

    /// <summary>Its size.</summary>
    public WireSize Size { get; }

    /// <summary>How the metal is made up.</summary>
    public Stranding Stranding { get; }

    /// <summary>What it is made of.</summary>
    public ConductorMaterial Material { get; }

    internal double OhmsPerMeterAt20C { get; }

    internal double OhmsPerMeterPerKelvin => OhmsPerMeterAt20C * Material.TemperatureCoefficientAt20C;

    /// <summary>Resistance per length of this one conductor at a temperature. [Ω/m]</summary>
    /// <param name="temperature">Temperature of the conductor, inside the material's range.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside the material's range.</exception>
    public LinearResistance ResistancePerLengthAt(Temperature temperature)
    {
        double celsius = Require.Within(Celsius.Of(temperature), Material.ValidFromCelsius, Material.ValidToCelsius, nameof(temperature), "°C");
        return LinearResistance.FromOhmsPerMeter(OhmsPerMeterAt(celsius));
    }

    /// <summary>Resistance of a length of this one conductor at a temperature. [Ω]</summary>
    /// <param name="length">Length of the conductor, at least 0. [any length unit]</param>
    /// <param name="temperature">Temperature of the conductor, inside the material's range.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ElectricResistance ResistanceAt(Length length, Temperature temperature) =>
        ResistancePerLengthAt(temperature).Over(length);

    /// <summary>Size, stranding and material; never throws.</summary>
    public override string ToString() => $"{Size} {Stranding} {Material}";

    internal double OhmsPerMeterAt(double celsius) => OhmsPerMeterAt20C + (OhmsPerMeterPerKelvin * (celsius - Celsius.Reference));
}
