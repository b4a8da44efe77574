using System.Collections.Generic;
using System.Linq;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>Constructions of cable that the trade uses, without brands, each with its source.</summary>
/// <remarks>
/// The sizes and constructions are common practice; the resistances follow from the nominal areas. A drum may be of
/// copper-clad aluminum under the same jacket: measure it (<see cref="CableIdentification"/>). The insulation is
/// not given: its rating is on the jacket.
/// </remarks>
/// <example><code>var run = new CableRun(CableCatalog.Pair18, oneWayLength: Length.FromFeet(120));</code></example>
public static class CableCatalog
{
    private const int PairsInACategoryCable = 4;

    /// <summary>A stranded pair of 22 AWG copper.</summary>
    public static Cable Pair22 { get; } = StrandedPair(22);

    /// <summary>A stranded pair of 20 AWG copper.</summary>
    public static Cable Pair20 { get; } = StrandedPair(20);

    /// <summary>A stranded pair of 18 AWG copper.</summary>
    public static Cable Pair18 { get; } = StrandedPair(18);

    /// <summary>A stranded pair of 16 AWG copper.</summary>
    public static Cable Pair16 { get; } = StrandedPair(16);

    /// <summary>A stranded pair of 14 AWG copper.</summary>
    public static Cable Pair14 { get; } = StrandedPair(14);

    /// <summary>A flexible pair of 0.75 mm² copper, at its nominal area.</summary>
    public static Cable FlexiblePair075 { get; } =
        Common("2 × 0.75 mm2 flexible", Copper(WireSize.SquareMillimeters(0.75), Stranding.IecClass5));

    /// <summary>A flexible pair of 1.5 mm² copper, at its nominal area.</summary>
    public static Cable FlexiblePair150 { get; } =
        Common("2 × 1.5 mm2 flexible", Copper(WireSize.SquareMillimeters(1.5), Stranding.IecClass5));

    /// <summary>A stranded pair of 18 AWG copper bundled with 75 Ω coaxial cable that has a solid copper center.</summary>
    public static Cable CoaxWithPair18 { get; } = CoaxWithPair("75 Ω coax + 18 AWG/2",
        Copper(WireSize.Awg(20), Stranding.Solid));

    /// <summary>A stranded pair of 18 AWG copper bundled with 75 Ω coaxial cable that has a copper-clad steel center.</summary>
    public static Cable SteelCoaxWithPair18 { get; } = CoaxWithPair("75 Ω coax, copper-clad steel center, + 18 AWG/2",
        new Conductor(WireSize.Awg(22), Stranding.Solid, ConductorMaterial.CopperCladSteel40));

    /// <summary>A thin ready-made lead of 24 AWG copper with its connectors on.</summary>
    public static Cable ReadyMadeLead24 { get; } =
        Common("24 AWG ready-made lead", Copper(WireSize.Awg(24), Stranding.ClassB), isPreTerminated: true);

    /// <summary>A thin ready-made lead of 22 AWG copper with its connectors on.</summary>
    public static Cable ReadyMadeLead22 { get; } =
        Common("22 AWG ready-made lead", Copper(WireSize.Awg(22), Stranding.ClassB), isPreTerminated: true);

    /// <summary>A thin ready-made lead of 22 AWG copper-clad aluminum with its connectors on.</summary>
    public static Cable CladReadyMadeLead22 { get; } = Common("22 AWG copper-clad aluminum ready-made lead",
        new Conductor(WireSize.Awg(22), Stranding.ClassB, ConductorMaterial.CopperCladAluminum10), isPreTerminated: true);

    private static readonly Cable[] Category5ePairs = CategoryCables("category 5e", WireSize.Awg(24));

    private static readonly Cable[] Category6Pairs = CategoryCables("category 6", WireSize.Awg(23));

    /// <summary>Every construction of the catalog, the category cables with one to four pairs.</summary>
    public static IReadOnlyList<Cable> All { get; } = System.Array.AsReadOnly<Cable>(
    [
        Pair22, Pair20, Pair18, Pair16, Pair14, FlexiblePair075, FlexiblePair150, CoaxWithPair18, SteelCoaxWithPair18,
        ReadyMadeLead24, ReadyMadeLead22, CladReadyMadeLead22,
        .. Category5ePairs, .. Category6Pairs,
    ]);

    /// <summary>Category 5e cable, 24 AWG solid copper, with some of its pairs ganged: one wire of each on either pole.</summary>
    /// <param name="pairs">How many of the four pairs carry the power, from 1 to 4.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="pairs"/> is outside its range.</exception>
    public static Cable Category5e(int pairs) => Category5ePairs[PairIndex(pairs)];

    /// <summary>Category 6 cable, 23 AWG solid copper, with some of its pairs ganged: one wire of each on either pole.</summary>
    /// <param name="pairs">How many of the four pairs carry the power, from 1 to 4.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="pairs"/> is outside its range.</exception>
    public static Cable Category6(int pairs) => Category6Pairs[PairIndex(pairs)];

    private static Cable StrandedPair(int gauge) =>
        Common($"{WireSize.Awg(gauge)}/2 stranded", Copper(WireSize.Awg(gauge), Stranding.ClassB));

    private static int PairIndex(int pairs) => (int)Require.Within(pairs, 1, PairsInACategoryCable, nameof(pairs), "") - 1;

    private static Cable[] CategoryCables(string name, WireSize size) =>
        [.. Enumerable.Range(1, PairsInACategoryCable).Select(pairs => Category(name, size, pairs))];

    private static Cable Category(string name, WireSize size, int pairs)
    {
        Conductor pole = Copper(size, Stranding.Solid).InParallel(pairs);
        return new Cable(pole, pole, name: pairs == 1
            ? $"{name}, 1 pair"
            : System.FormattableString.Invariant($"{name}, {pairs} pairs ganged"),
            source: Sources.CategoryCable);
    }

    private static Cable CoaxWithPair(string name, Conductor center)
    {
        Conductor power = Copper(WireSize.Awg(18), Stranding.ClassB);
        return new Cable(power, power, name: name, coax: new Cable(center, BraidedShield(), name: "75 Ω coax"),
            source: Sources.CableConstruction);
    }

    // A braid has no size of its own: 2 mm² of copper conduct as it does.
    private static Conductor BraidedShield() => new(WireSize.SquareMillimeters(2), new Stranding("braid", 1, Sources.CoaxConstruction),
        ConductorMaterial.AnnealedCopper, TabulatedResistance.Typical("95 % braid",
            LinearResistance.FromOhmsPer1000Feet(ConductorConstants.CoaxShieldResistance.Value),
                Temperature.FromDegreesCelsius(Celsius.Reference),
            ConductorConstants.CoaxShieldResistance.Source));

    private static Cable Common(string name, Conductor conductor, bool isPreTerminated = false) =>
        new(conductor, conductor, isPreTerminated, name, source: Sources.CableConstruction);

    private static Conductor Copper(WireSize size, Stranding stranding) => new(size, stranding, ConductorMaterial.AnnealedCopper);
}
