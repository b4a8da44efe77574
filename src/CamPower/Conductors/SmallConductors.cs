using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Conductors;

/// <summary>Limits of the US code for small conductors of the American wire gauge, whatever their insulation and installation
/// method.</summary>
/// <remarks>
/// Copper of 18, 16, 14, 12 and 10 AWG: a protective device of 7, 10, 15, 20 and 30 A at most (<see cref="Sources.NecSmallConductors"/>,
/// the first two from memory); aluminum and copper-clad aluminum of 12 and 10 AWG: 15 and 25 A, and of 14 AWG 10 A (NEC 2023, copper-clad
/// alone, from memory); smaller ones have no row, and at most what copper has. Building codes know nothing smaller; for 22 and 20 AWG
/// copper the fuses of a chart for aircraft are used, 5 A both (<see cref="Sources.AircraftProtectors"/>). A gauge between two rows has
/// what the smaller one has. It limits the protective device and the continuous load. It does not bind metric sizes, which go by a table of
/// their own (<see cref="InstallationMethod.OnWall"/>), nor Class 2 circuits. Check the ampacity too
/// (<see cref="InstallationMethod.Ampacity"/>). The local code decides.
/// </remarks>
internal static class SmallConductors
{
    private static readonly (double SquareMeters, double Amperes)[] Copper =
        Rows((22, 5), (20, 5), (18, 7), (16, 10), (14, 15), (12, 20), (10, 30));

    private static readonly (double SquareMeters, double Amperes)[] Aluminum =
        Rows((22, 5), (20, 5), (18, 7), (16, 10), (14, 10), (12, 15), (10, 25));

    private static readonly double From18Awg = WireSize.Awg(18).SquareMeters, From14Awg = WireSize.Awg(14).SquareMeters,
        From12Awg = WireSize.Awg(12).SquareMeters;

    /// <inheritdoc cref="Conductor.NecLargestProtection"/>
    internal static double? ProtectionAmperes(Conductor conductor)
    {
        if (conductor.Size.Series != WireSizeSeries.Awg) return null;
        double area = conductor.Size.SquareMeters;
        if (RowsFor(conductor.Material) is not { } rows || area > rows[rows.Length - 1].SquareMeters) return null;
        double? each = null;
        foreach ((double squareMeters, double amperes) in rows)
        {
            if (squareMeters <= area) each = amperes;
        }

        return each * conductor.Count;
    }

    /// <inheritdoc cref="Conductor.NecLargestContinuousLoad"/>
    internal static double? ContinuousAmperes(Conductor conductor)
    {
        if (conductor.Size.SquareMeters < From18Awg) return null;
        double? protection = ProtectionAmperes(conductor);
        return conductor.Size.SquareMeters < (ReferenceEquals(RowsFor(conductor.Material), Copper) ? From14Awg : From12Awg)
            ? protection * ConductorConstants.ContinuousShareOfSmallConductors.Value / 100
            : protection;
    }

    private static (double SquareMeters, double Amperes)[]? RowsFor(ConductorMaterial material)
    {
        if (ReferenceEquals(material, ConductorMaterial.AnnealedCopper) || ReferenceEquals(material, ConductorMaterial.HardDrawnCopper))
        {
            return Copper;
        }

        return ReferenceEquals(material, ConductorMaterial.Aluminum) || material.IsCopperCladAluminum ? Aluminum : null;
    }

    private static (double SquareMeters, double Amperes)[] Rows(params (int Gauge, double Amperes)[] rows) =>
        [.. rows.Select(r => (WireSize.Awg(r.Gauge).SquareMeters, r.Amperes))];
}
