using System;
using CamPower.Studies;
using UnitsNet;

namespace CamPower;

/// <summary>What is ordered above what is drawn: slack, tails, rises and spare fuses.</summary>
/// <remarks>Immutable.</remarks>
/// <example>
/// <code>
/// var policy = new MaterialPolicy(slack: Ratio.FromPercent(5), tail: Length.FromMeters(1), spareFuses: Ratio.FromPercent(50),
///     rise: Length.FromMeters(2.5));
/// </code>
/// </example>
public sealed class MaterialPolicy
{
    /// <summary>States a policy.</summary>
    /// <param name="slack">What is added to the route of a cable, in percent of it, from 0 to 100 %.</param>
    /// <param name="tail">What is left at each end of a cable to be terminated, at least 0. [m]</param>
    /// <param name="spareFuses">Spare fuses in percent of those in use, from 0 to 1000 %; the number is rounded up.</param>
    /// <param name="rise">What a cable climbs at each end beside its route, at least 0: for sites whose lengths are those of a plan; null
    /// for none. [m]</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public MaterialPolicy(Ratio slack, Length tail, Ratio spareFuses, Length? rise = null)
    {
        SlackShare = Require.Within(slack.DecimalFractions, 0, 1, nameof(slack), "");
        EndMeters = Require.NotNegative(Require.Finite(tail.Meters, nameof(tail), "m"), nameof(tail), "m");
        SpareShare = Require.Within(spareFuses.DecimalFractions, 0, 10, nameof(spareFuses), "");
        if (rise is Length climbs) EndMeters += Require.NotNegative(Require.Finite(climbs.Meters, nameof(rise), "m"), nameof(rise), "m");
        Slack = slack;
        Tail = tail;
        SpareFuses = spareFuses;
        Rise = rise ?? Length.Zero;
    }

    /// <summary>10 % slack, half a meter at each end, a fifth more fuses, no rise.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public static MaterialPolicy CommonPractice { get; } = new(Ratio.FromPercent(StudyConstants.CableSlack.Value),
        Length.FromMeters(StudyConstants.CableTail.Value), Ratio.FromPercent(StudyConstants.SpareFuses.Value));

    /// <summary>What is added to the route of a cable, in percent of it.</summary>
    public Ratio Slack { get; }

    /// <summary>What is left at each end of a cable to be terminated. [m]</summary>
    public Length Tail { get; }

    /// <summary>Spare fuses in percent of those in use.</summary>
    public Ratio SpareFuses { get; }

    /// <summary>What a cable climbs at each end beside its route. [m]</summary>
    public Length Rise { get; }

    private double SlackShare { get; }

    private double EndMeters { get; }

    private double SpareShare { get; }

    /// <summary>All of it in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{SlackShare * 100:0.###} % slack, {EndMeters:0.###} m at each end, {SpareShare * 100:0.###} % spare fuses");

    /// <summary>What is cut of a cable for a route. [m]</summary>
    internal double CutMeters(double routeMeters) => (routeMeters * (1 + SlackShare)) + (2 * EndMeters);

    // What a binary fraction is above the decimal one is no fuse.
    internal int SparesFor(int used) => (int)Math.Ceiling((used * SpareShare) - 1e-9);
}
