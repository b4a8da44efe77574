using System;
using CamPower.Conductors;
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

    /// <summary>Solid, or stranded and how.</summary>
    public Stranding Stranding { get; }

    /// <summary>What it is made of.</summary>
    public ConductorMaterial Material { get; }

    /// <summary>What the resistance is taken from.</summary>
    public ResistanceBasis Basis { get; }

    /// <summary>How many equal wires in parallel it consists of; 1 unless <see cref="InParallel"/> made it.</summary>
    public int Count { get; }

    /// <summary>Mass of the metal per length at 20 °C, of the wires in parallel together; null where the material's density is not known.
    /// [kg/m]</summary>
    /// <remarks>Area × density × the lay factor of the stranding: strands that wind are longer than the conductor.</remarks>
    /// <example>18 AWG solid copper: 4.917 lb/1000 ft.</example>
    public LinearDensity? MassPerLength => Material.Density is Density density
        ? LinearDensity.FromKilogramsPerMeter(Count * Size.SquareMeters * Stranding.LayFactor * density.KilogramsPerCubicMeter)
        : null;

    /// <summary>The largest protective device that the US code allows a small conductor, wires in parallel counting together; null where no
    /// row reaches to it. [A]</summary>
    /// <remarks>
    /// Copper of 18, 16, 14, 12 and 10 AWG: 7, 10, 15, 20 and 30 A (<see cref="Sources.NecSmallConductors"/>, the first two from memory);
    /// aluminum and copper-clad aluminum of 12 and 10 AWG: 15 and 25 A, of 14 AWG 10 A (from memory). For 22 and 20 AWG copper 5 A, from a
    /// chart for aircraft (<see cref="Sources.AircraftProtectors"/>). A gauge between two rows has what the smaller one has. Other
    /// materials, other series than the American wire gauge and Class 2 circuits are not bound by it.
    /// <para>Check the ampacity too (<see cref="InstallationMethod.Ampacity"/>). The local code decides.</para>
    /// </remarks>
    /// <example><code>ElectricCurrent? fuse = wire.NecLargestProtection;   // 7 A for 18 AWG copper</code></example>
    public ElectricCurrent? NecLargestProtection => Amperes(SmallConductors.ProtectionAmperes(this));

    /// <summary>The largest continuous load of a small conductor after the US code; null for any other. [A]</summary>
    /// <remarks>
    /// 80 % of <see cref="NecLargestProtection"/> from 18 AWG to under 14 AWG, of aluminum and copper-clad aluminum to under 12 AWG; all of
    /// it up to 10 AWG. Sources: <see cref="Sources.NecSmallConductorsFromMemory"/>, <see cref="Sources.NecLoadOfSmallConductors"/>. Where
    /// a protective device has to be larger than a continuous load, as the NEC wants of branch circuits, its largest rating leaves less.
    /// </remarks>
    /// <example><code>ElectricCurrent? load = wire.NecLargestContinuousLoad;   // 5.6 A for 18 AWG copper</code></example>
    public ElectricCurrent? NecLargestContinuousLoad => Amperes(SmallConductors.ContinuousAmperes(this));

    /// <summary>Cross-section of the wires in parallel together. [m²]</summary>
    internal double SquareMeters => Count * Size.SquareMeters;

    internal double OhmsPerMeterAt20C { get; }

    internal double OhmsPerMeterPerKelvin => OhmsPerMeterAt20C * Material.TemperatureCoefficientAt20C;

    /// <summary>A conductor of plain copper or of aluminum at the most resistance that IEC 60228 allows for its class, at 20 °C.</summary>
    /// <param name="size">A size of the standard, from 0.5 to 50 mm²; aluminum from 10 mm².</param>
    /// <param name="iecClass"><see cref="Stranding.IecClass1"/>, <see cref="Stranding.IecClass2"/> or
    /// <see cref="Stranding.IecClass5"/>.</param>
    /// <param name="material"><see cref="ConductorMaterial.AnnealedCopper"/>, or <see cref="ConductorMaterial.Aluminum"/> in classes 1 and
    /// 2.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">The standard has no such conductor, or none that is held here.</exception>
    /// <remarks>
    /// The standard fixes maxima, not areas: they lie 4 to 19 % above what the nominal area gives. Cells that were not seen in
    /// print say so in their source: <see cref="Sources.Iec60228"/>, <see cref="Sources.Iec60228FromMemory"/>.
    /// </remarks>
    /// <example>
    /// <code>
    /// var size = WireSize.SquareMillimeters(1.5);
    /// var atMost = Conductor.AtIecMaximum(size, Stranding.IecClass5, ConductorMaterial.AnnealedCopper);   // 13.3 Ω/km
    /// var nominal = new Conductor(size, Stranding.IecClass5, ConductorMaterial.AnnealedCopper);          // 11.95 Ω/km
    /// </code>
    /// </example>
    public static Conductor AtIecMaximum(WireSize size, Stranding iecClass, ConductorMaterial material) =>
        Iec60228.Maximum(size, iecClass, material);

    /// <summary>A conductor of metal-coated copper, such as tinned copper, at the most resistance that IEC 60228 allows for its class, at
    /// 20 °C.</summary>
    /// <param name="size">A size of the standard, from 0.5 to 50 mm².</param>
    /// <param name="iecClass"><see cref="Stranding.IecClass1"/> up to 16 mm², <see cref="Stranding.IecClass2"/> or
    /// <see cref="Stranding.IecClass5"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="iecClass"/> is null.</exception>
    /// <exception cref="ArgumentException">The standard has no such conductor, or none that is held here.</exception>
    /// <remarks>Source: <see cref="Sources.Iec60228"/>.</remarks>
    public static Conductor CoatedAtIecMaximum(WireSize size, Stranding iecClass) => Iec60228.CoatedCopperMaximum(size, iecClass);

    /// <summary>A conductor of coated copper, such as tinned copper, as NEC Chapter 9 Table 8 gives it at 75 °C.</summary>
    /// <param name="size">A gauge of the table: solid from 18 to 8 AWG, stranded from 18 to 4/0 AWG.</param>
    /// <param name="stranding"><see cref="Stranding.Solid"/> or <see cref="Stranding.ClassB"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="stranding"/> is null.</exception>
    /// <exception cref="ArgumentException">The table has no such conductor, or none that is held here.</exception>
    /// <remarks>
    /// Coated copper is 2 to 6 % above uncoated by size and stranding, so each figure is kept as printed. Uncoated copper and aluminum of
    /// the same table follow from their nominal areas. Source: <see cref="Sources.NecTable8"/>, <see cref="Sources.NecTable8FromMemory"/>.
    /// </remarks>
    /// <example>
    /// <code>
    /// Conductor tinned = Conductor.NecCoatedCopper(WireSize.Awg(18), Stranding.ClassB);   // 8.45 Ω/1000 ft at 75 °C
    /// </code>
    /// </example>
    public static Conductor NecCoatedCopper(WireSize size, Stranding stranding) => NecTable8.CoatedCopper(size, stranding);

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

    private static ElectricCurrent? Amperes(double? amperes) => amperes is double known ? ElectricCurrent.FromAmperes(known) : null;

    internal double OhmsPerMeterAt(double celsius) => OhmsPerMeterAt20C + (OhmsPerMeterPerKelvin * (celsius - Celsius.Reference));
}
