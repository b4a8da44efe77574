using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>Which cable a measured loop resistance can be.</summary>
/// <remarks>
/// Immutable. A meter reads a resistance; size, material and stranding all go into it, and several sets of them come
/// out the same: 18 AWG copper-clad aluminum is 20 AWG copper to three digits. So the answer is a ranking of groups,
/// and inside a group no reading of this tolerance decides. The tolerance covers everything: the meter and its leads,
/// the length, the temperature and the drawing of the wire. Take lead resistance and joints off the reading first.
/// Source of the resistances: <see cref="Sources.Resistance"/>.
/// </remarks>
/// <example>
/// <code>
/// var cable = CableIdentification.Of(ElectricResistance.FromOhms(2.03), oneWayLength: Length.FromFeet(100),
///     conductorAt: Temperature.FromDegreesCelsius(20), tolerance: Ratio.FromPercent(1));
/// foreach (CableCandidate candidate in cable.Groups[0]) Console.WriteLine(candidate);
/// </code>
/// </example>
public sealed class CableIdentification
{
    private CableIdentification(
        ElectricResistance loop, Length oneWayLength, Temperature conductorAt, Ratio tolerance,
        IReadOnlyList<IReadOnlyList<CableCandidate>> groups)
    {
        MeasuredLoop = loop;
        OneWayLength = oneWayLength;
        ConductorTemperature = conductorAt;
        Tolerance = tolerance;
        Groups = groups;
    }

    /// <summary>
    /// Pairs that are found in the field: 10 to 26 AWG, solid and stranded, and 0.5 to 2.5 mm² in the classes of IEC
    /// 60228 at their nominal areas, each of copper and of copper-clad aluminum.
    /// </summary>
    /// <remarks>Common practice, no source.</remarks>
    public static IReadOnlyList<Cable> UsualCandidates { get; } = Array.AsReadOnly<Cable>(
    [
        .. Pairs(new[] { 10, 12, 14, 16, 18, 20, 22, 23, 24, 26 }.Select(WireSize.Awg), Stranding.Solid, Stranding.ClassB),
        .. Pairs(new[] { 0.5, 0.75, 1, 1.5, 2.5 }.Select(WireSize.SquareMillimeters), Stranding.IecClass1, Stranding.IecClass2,
            Stranding.IecClass5),
    ]);

    /// <summary>The reading.</summary>
    public ElectricResistance MeasuredLoop { get; }

    /// <summary>Length along the route, one way.</summary>
    public Length OneWayLength { get; }

    /// <summary>Temperature of the conductors at the reading.</summary>
    public Temperature ConductorTemperature { get; }

    /// <summary>Tolerance of a reading.</summary>
    public Ratio Tolerance { get; }

    /// <summary>The candidates, each once, in groups that this reading cannot tell apart; the nearest group first.</summary>
    /// <remarks>The first of a group is the nearest to the reading; the others lie within the tolerance of that one.</remarks>
    public IReadOnlyList<IReadOnlyList<CableCandidate>> Groups { get; }

    /// <summary>The groups whose first candidate the reading fits; empty where it fits none.</summary>
    public IEnumerable<IReadOnlyList<CableCandidate>> Fitting => Groups.Where(g => g[0].Fits);

    /// <summary>Ranks cables by a reading.</summary>
    /// <param name="measuredLoop">Resistance of the loop, far end shorted, leads taken off; above 0. [Ω]</param>
    /// <param name="oneWayLength">Length along the route, one way, above 0. [any length unit]</param>
    /// <param name="conductorAt">Temperature of the conductors at the reading, in the range of every candidate.</param>
    /// <param name="tolerance">How far the reading may be off, all causes together, from 0 to 0.5.</param>
    /// <param name="candidates">The cables in question; null for <see cref="UsualCandidates"/>. At least one.</param>
    /// <exception cref="ArgumentNullException">A candidate is null.</exception>
    /// <exception cref="ArgumentException">There is no candidate.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static CableIdentification Of(ElectricResistance measuredLoop, Length oneWayLength, Temperature conductorAt, Ratio tolerance,
        IEnumerable<Cable>? candidates = null)
    {
        double measured = Require.Positive(measuredLoop.Ohms, nameof(measuredLoop), "Ω");
        double meters = Require.Positive(oneWayLength.Meters, nameof(oneWayLength), "m");
        double allowed = Require.Within(tolerance.DecimalFractions, 0, 0.5, nameof(tolerance), "");
        List<CableCandidate> ranked = [.. Require.Items(candidates ?? UsualCandidates, nameof(candidates))
            .Select(cable => new CableCandidate(
                cable, meters * cable.LoopResistancePerLengthAt(conductorAt).OhmsPerMeter, measured, allowed))
            .OrderBy(candidate => candidate.AbsoluteDeviation)];
        if (ranked.Count == 0) throw new ArgumentException("At least one candidate is needed.", nameof(candidates));
        return new CableIdentification(measuredLoop, oneWayLength, conductorAt, tolerance, Array.AsReadOnly([.. Grouped(ranked, allowed)]));
    }

    /// <summary>The best group, or that nothing fits; never throws.</summary>
    public override string ToString() => (Groups[0][0].Fits ? "" : "nothing fits; nearest is ") + string.Join(" or ", Groups[0]);

    // The nearest leads a group of all within the tolerance of it; of the rest the nearest leads the next.
    private static IEnumerable<IReadOnlyList<CableCandidate>> Grouped(List<CableCandidate> ranked, double tolerance)
    {
        while (ranked.Count > 0)
        {
            CableCandidate leader = ranked[0];
            ILookup<bool, CableCandidate> split = ranked.ToLookup(c => IsInseparable(c, leader, tolerance));
            yield return Array.AsReadOnly([.. split[true]]);
            ranked = [.. split[false]];
        }
    }

    private static bool IsInseparable(CableCandidate candidate, CableCandidate leader, double tolerance) =>
        candidate == leader || Math.Abs((candidate.Ohms / leader.Ohms) - 1) <= tolerance;

    private static IEnumerable<Cable> Pairs(IEnumerable<WireSize> sizes, params Stranding[] strandings) =>
        from size in sizes
        from stranding in strandings
        from material in new[] { ConductorMaterial.AnnealedCopper, ConductorMaterial.CopperCladAluminum10,
            ConductorMaterial.CopperCladAluminum15 }
        select Cable.Pair(size, stranding, material);
}
