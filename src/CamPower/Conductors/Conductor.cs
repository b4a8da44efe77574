using System;
using UnitsNet;

namespace CamPower;

/// <summary>The metal of one pole: material, size and stranding, and what its resistance is taken from.</summary>
/// <remarks>
/// Immutable. Its resistance per length is ρ(T)·k/A, where k is the lay factor of the stranding, or what a table states
/// (<see cref="Basis"/>); several equal wires in parallel share the current. Source: <see cref="Sources.Resistance"/>.
/// </remarks>
/// <example>
/// <code>
/// var conductor = new Conductor(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper);
/// LinearResistance perLength = conductor.ResistancePerLengthAt(Temperature.FromDegreesCelsius(20));   // 6.385 Ω/1000 ft
/// </code>
/// </example>
public sealed class Conductor
{
    /// <summary>Describes a conductor whose resistance follows from its nominal area.</summary>
    /// <param name="size">Its size; not the default value.</param>
    /// <param name="stranding">How the metal is made up.</param>
    /// <param name="material">What it is made of.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="size"/> is the default value.</exception>
    public Conductor(WireSize size, Stranding stranding, ConductorMaterial material)
        : this(size, stranding, material, NominalArea.Instance, 1)
    {
    }

    /// <summary>Describes a conductor whose resistance a table states.</summary>
    /// <param name="size">Its size; not the default value.</param>
    /// <param name="stranding">How the metal is made up; its lay is in the table's figure already.</param>
    /// <param name="material">What it is made of: gives the change with temperature.</param>
    /// <param name="resistance">What the table states, at a temperature inside the material's range.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="size"/> is the default value, or the table's
    /// temperature is outside the material's range.</exception>
    public Conductor(WireSize size, Stranding stranding, ConductorMaterial material, TabulatedResistance resistance)
        : this(size, stranding, material, Require.NotNull(resistance, nameof(resistance)), 1)
    {
        Require.Within(resistance.AtCelsius, Material.ValidFromCelsius, Material.ValidToCelsius, nameof(resistance), "°C");
    }

    private Conductor(WireSize size, Stranding stranding, ConductorMaterial material, ResistanceBasis basis, int count)
    {
        Require.Positive(size.SquareMeters, nameof(size), "m²");
        Size = size;
        Stranding = Require.NotNull(stranding, nameof(stranding));
        Material = Require.NotNull(material, nameof(material));
        Basis = basis;
        Count = count;
        OhmsPerMeterAt20C = basis.OhmsPerMeterAt20C(size, stranding, material) / count;
    }

    /// <summary>The size of each wire.</summary>
    public WireSize Size { get; }

    /// <summary>How the metal is made up.</summary>
    public Stranding Stranding { get; }

    /// <summary>What it is made of.</summary>
    public ConductorMaterial Material { get; }

    /// <summary>What the resistance is taken from.</summary>
    public ResistanceBasis Basis { get; }

    /// <summary>How many equal wires in parallel it consists of; 1 unless <see cref="InParallel"/> made it.</summary>
    public int Count { get; }

    /// <summary>Mass of the metal per length at 20 °C, of the wires in parallel together; null where the material's density is not known. [kg/m]</summary>
    /// <remarks>Area × density × the lay factor of the stranding: strands that wind are longer than the conductor.</remarks>
    /// <example>18 AWG solid copper: 4.917 lb/1000 ft.</example>
    public LinearDensity? MassPerLength => Material.Density is Density density
        ? LinearDensity.FromKilogramsPerMeter(Count * Size.SquareMeters * Stranding.LayFactor * density.KilogramsPerCubicMeter)
        : null;

    internal double OhmsPerMeterAt20C { get; }

    internal double OhmsPerMeterPerKelvin => OhmsPerMeterAt20C * Material.TemperatureCoefficientAt20C;

    /// <summary>The same wire several times over, in parallel on one pole.</summary>
    /// <param name="count">How many of this conductor, from 1 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    /// <example>
    /// A positive that is doubled, over a single negative:
    /// <code>var cable = new Cable(wire.InParallel(2), wire);</code>
    /// </example>
    public Conductor InParallel(int count)
    {
        Require.Within(count, 1, 1000, nameof(count), "");
        return new Conductor(Size, Stranding, Material, Basis, Count * count);
    }

    /// <summary>Resistance per length at a temperature, of the wires in parallel together. [Ω/m]</summary>
    /// <param name="temperature">Temperature of the conductor, inside the material's range.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside the material's range.</exception>
    public LinearResistance ResistancePerLengthAt(Temperature temperature) =>
        LinearResistance.FromOhmsPerMeter(OhmsPerMeterAt(Material.CelsiusOf(temperature, nameof(temperature))));

    /// <summary>Resistance of a length at a temperature, of the wires in parallel together. [Ω]</summary>
    /// <param name="length">Length of the conductor, at least 0. [any length unit]</param>
    /// <param name="temperature">Temperature of the conductor, inside the material's range.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ElectricResistance ResistanceAt(Length length, Temperature temperature) =>
        ResistancePerLengthAt(temperature).Over(length);

    /// <summary>Size, stranding and material, with the table where there is one; never throws.</summary>
    public override string ToString()
    {
        string times = Count == 1 ? string.Empty : FormattableString.Invariant($"{Count} × ");
        string table = Basis is TabulatedResistance ? $" ({Basis.Name})" : string.Empty;
        return $"{times}{Size} {Stranding} {Material}{table}";
    }

    internal double OhmsPerMeterAt(double celsius) => OhmsPerMeterAt20C + (OhmsPerMeterPerKelvin * (celsius - Celsius.Reference));
}
