using System;
using System.Linq;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower.Conductors;

/// <summary>Coated copper as NEC Chapter 9 Table 8 gives it, at 75 °C.</summary>
/// <remarks>
/// Coated copper is 2 to 6 % above uncoated by size and stranding, and the table prints three digits, so each figure
/// is kept as printed. Uncoated copper and aluminum of the same table follow from their nominal areas: use
/// <see cref="Conductor(WireSize, Stranding, ConductorMaterial)"/>. Solid from 18 to 8 AWG, stranded from 18 to 4/0 AWG.
/// Source: <see cref="Sources.NecTable8"/>, <see cref="Sources.NecTable8FromMemory"/>.
/// </remarks>
internal static class NecTable8
{
    private const int StrandedFromMemory = 14;

    private static readonly Temperature At = Temperature.FromDegreesCelsius(75);

    private static readonly (int Gauge, double OhmsPer1000Feet)[] Solid =
        [(18, 8.08), (16, 5.08), (14, 3.19), (12, 2.01), (10, 1.26), (8, 0.786)];

    private static readonly (int Gauge, double OhmsPer1000Feet)[] Stranded =
    [
        (18, 8.45), (16, 5.29), (StrandedFromMemory, 3.26), (12, 2.05), (10, 1.29), (8, 0.809), (6, 0.510), (4, 0.321), (3, 0.254),
        (2, 0.201), (1, 0.160), (0, 0.127), (-1, 0.101), (-2, 0.0797), (-3, 0.0626),
    ];

    /// <inheritdoc cref="Conductor.NecCoatedCopper"/>
    internal static Conductor CoatedCopper(WireSize size, Stranding stranding)
    {
        Require.NotNull(stranding, nameof(stranding));
        (int Gauge, double OhmsPer1000Feet)[] rows = stranding == Stranding.Solid ? Solid : stranding == Stranding.ClassB ? Stranded : [];
        foreach ((int gauge, double ohms) in rows.Where(row => WireSize.Awg(row.Gauge) == size))
        {
            bool isRemembered = stranding == Stranding.ClassB && gauge == StrandedFromMemory;
            return new Conductor(size, stranding, ConductorMaterial.AnnealedCopper,
                TabulatedResistance.Typical("NEC Chapter 9 Table 8, coated",
                LinearResistance.FromOhmsPer1000Feet(ohms), At, isRemembered ? Sources.NecTable8FromMemory : Sources.NecTable8));
        }

        throw new ArgumentException($"No coated {size} {stranding} conductor is held of NEC Chapter 9 Table 8.", nameof(size));
    }
}
