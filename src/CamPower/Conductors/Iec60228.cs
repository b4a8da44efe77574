using System;
using System.Linq;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower.Conductors;

/// <summary>Conductors at the most resistance that IEC 60228 allows for their class, at 20 °C.</summary>
/// <remarks>
/// The standard fixes maxima, not areas: they lie 4 to 19 % above what the nominal area gives. For the nominal value
/// use <see cref="Conductor(WireSize, Stranding, ConductorMaterial)"/> with the same class. Sizes: 0.5 to 50 mm²,
/// aluminum from 10 mm². Cells that were not seen in print say so in their source.
/// Source: <see cref="Sources.Iec60228"/>, <see cref="Sources.Iec60228FromMemory"/>.
/// </remarks>
internal static class Iec60228
{
    private static readonly Temperature At = Temperature.FromDegreesCelsius(20);

    // Classes 1 and 2 have the same limits for plain copper, and for aluminum.
    private static readonly Column Copper = new("maximum",
        [(0.5, 36.0), (0.75, 24.5), (1, 18.1), (1.5, 12.1), (2.5, 7.41), (4, 4.61), (6, 3.08), (10, 1.83), (16, 1.15), (25, 0.727),
            (35, 0.524), (50, 0.387)], []);

    private static readonly Column CoatedClass1 = new("maximum, metal-coated",
        [], [(0.5, 36.7), (0.75, 24.8), (1, 18.2), (1.5, 12.2), (2.5, 7.56), (4, 4.70), (6, 3.11), (10, 1.84), (16, 1.16)]);

    private static readonly Column CoatedClass2 = new("maximum, metal-coated",
        [(0.5, 36.7), (0.75, 24.8), (1, 18.2), (1.5, 12.2), (2.5, 7.56), (4, 4.70), (6, 3.11), (10, 1.84), (16, 1.16), (25, 0.734),
            (35, 0.529), (50, 0.391)], []);

    private static readonly Column Aluminum = new("maximum", [(10, 3.08), (16, 1.91), (35, 0.868), (50, 0.641)], [(25, 1.20)]);

    private static readonly Column CopperClass5 = new("maximum",
        [(0.5, 39.0), (1, 19.5), (1.5, 13.3), (4, 4.95), (6, 3.30), (16, 1.21), (25, 0.780), (35, 0.554), (50, 0.386)],
            [(0.75, 26.0), (2.5, 7.98), (10, 1.91)]);

    private static readonly Column CoatedClass5 = new("maximum, metal-coated",
        [(0.5, 40.1), (0.75, 26.7), (1, 20.0), (1.5, 13.7), (2.5, 8.21), (4, 5.09), (6, 3.39), (10, 1.95), (16, 1.24), (25, 0.795),
            (35, 0.565), (50, 0.393)], []);

    /// <inheritdoc cref="Conductor.AtIecMaximum"/>
    internal static Conductor Maximum(WireSize size, Stranding iecClass, ConductorMaterial material)
    {
        Require.NotNull(iecClass, nameof(iecClass));
        Require.NotNull(material, nameof(material));
        bool isRigid = iecClass == Stranding.IecClass1 || iecClass == Stranding.IecClass2;
        Column? column = material == ConductorMaterial.AnnealedCopper ? isRigid ? Copper
            : iecClass == Stranding.IecClass5 ? CopperClass5
            : null
            : material == ConductorMaterial.Aluminum && isRigid ? Aluminum
            : null;
        return Held(column, size, iecClass, material);
    }

    /// <inheritdoc cref="Conductor.CoatedAtIecMaximum"/>
    internal static Conductor CoatedCopperMaximum(WireSize size, Stranding iecClass)
    {
        Require.NotNull(iecClass, nameof(iecClass));
        Column? column = iecClass == Stranding.IecClass1 ? CoatedClass1
            : iecClass == Stranding.IecClass2 ? CoatedClass2
            : iecClass == Stranding.IecClass5 ? CoatedClass5
            : null;
        return Held(column, size, iecClass, ConductorMaterial.AnnealedCopper);
    }

    private static Conductor Held(Column? column, WireSize size, Stranding iecClass, ConductorMaterial material) =>
        column?.Find(size) is TabulatedResistance limit
            ? new Conductor(size, iecClass, material, limit)
            : throw new ArgumentException($"No limit for {size} {iecClass} {material} is held of IEC 60228.", nameof(size));

    /// <summary>One column of the standard's tables: limits that were seen in print, and limits from memory.</summary>
    private sealed class Column(
        string name, (double Area, double OhmsPerKilometer)[] seen, (double Area, double OhmsPerKilometer)[] remembered)
    {
        internal TabulatedResistance? Find(WireSize size) =>
            Find(size, seen, Sources.Iec60228) ?? Find(size, remembered, Sources.Iec60228FromMemory);

        private TabulatedResistance? Find(WireSize size, (double Area, double OhmsPerKilometer)[] cells, Citation source) => cells
            .Where(cell => WireSize.SquareMillimeters(cell.Area) == size)
            .Select(cell => TabulatedResistance.Maximum(
                "IEC 60228 " + name, LinearResistance.FromOhmsPerKilometer(cell.OhmsPerKilometer), At, source))
            .FirstOrDefault();
    }
}
