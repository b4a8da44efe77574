using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;

namespace CamPower.Assessment;

/// <summary>Where the voltage of a box with an unregulated supply settles with what it feeds. SI doubles.</summary>
/// <remarks>The current grows from nothing until the circuits take no more than it at the voltage that it leaves: the first such point,
/// which is the highest voltage. A supply that is asked for more than its rating has the voltage of its rated current; its overload is
/// the business of <see cref="BoxRail"/>.</remarks>
internal static class UnregulatedRail
{
    private const int Steps = 64, Halvings = 40;

    /// <summary>The boxes of a site whose supply is unregulated.</summary>
    internal static DistributionBox[] Of(IEnumerable<DistributionBox> boxes) => [.. boxes.Where(b => CurveOf(b) is not null)];

    /// <summary>The lowest voltage of a box with everything on. [V]</summary>
    internal static double Lowest(DistributionBox box, Condition condition, IReadOnlyList<GroupInCondition> groups)
    {
        UnregulatedCurve curve = CurveOf(box)!;
        double? line = LineShare(box, condition);
        return Settled(box, amperes => curve.LowestAt(amperes, line),
            volts => groups.Sum(g => g.Circuit.AmperesAt(volts, box, g.Lowest, g.Loads)));
    }

    /// <summary>The highest voltage of a box with some loads on, in any of some conditions. [V]</summary>
    internal static double Highest(
        DistributionBox box, IEnumerable<Condition> conditions, IReadOnlyList<(FeedCircuit Circuit, RailVolts Rail, Load[] Loads)> fed)
    {
        UnregulatedCurve curve = CurveOf(box)!;
        double line = HighestLineShare(box, conditions);
        return Settled(box, amperes => curve.HighestAt(amperes, line),
            volts => fed.Sum(f => f.Circuit.AmperesAt(volts, box, f.Rail, f.Loads)));
    }

    /// <summary>The highest voltage of a box before anything draws, in any of some conditions. [V]</summary>
    internal static double Unloaded(DistributionBox box, IEnumerable<Condition> conditions) =>
        CurveOf(box)?.HighestAt(0, HighestLineShare(box, conditions)) ?? TransformerRail.Highest(box, conditions) ?? box.HighestVolts;

    private static double HighestLineShare(DistributionBox box, IEnumerable<Condition> conditions) =>
        conditions.Max(condition => LineShare(box, condition) ?? (1 + box.Supply.Output.Tolerance.DecimalFractions));

    // A line voltage that is stated is no longer within a tolerance. Without a receptacle nothing says what it is nominally.
    internal static double? LineShare(DistributionBox box, Condition condition) => condition.LineVolts / box.Receptacle?.Volts;

    private static UnregulatedCurve? CurveOf(DistributionBox box) => (box.Supply.Output as DcOutput)?.Unregulated;

    private static double Settled(DistributionBox box, Func<double, double> voltsAt, Func<double, double> takenAt)
    {
        double rated = box.Supply.Output.RatedAmperes, tooLittle = 0;
        for (int step = 0; step <= Steps; step++)
        {
            double amperes = rated * step / Steps;
            if (takenAt(voltsAt(amperes)) <= amperes) return voltsAt(step == 0 ? 0 : LeastEnough(tooLittle, amperes));
            tooLittle = amperes;
        }

        return voltsAt(rated);

        double LeastEnough(double lacking, double enough) =>
            Bisection.LastHeld(enough, lacking, Halvings, amperes => takenAt(voltsAt(amperes)) <= amperes);
    }
}
