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
    internal static double Lowest(DistributionBox box, IReadOnlyList<GroupInCondition> groups)
    {
        UnregulatedCurve curve = CurveOf(box)!;
        return Settled(box, curve.LowestAt, volts => groups.Sum(g => g.Circuit.AmperesAt(volts, box, g.Lowest, g.Loads)));
    }

    /// <summary>The highest voltage of a box with some loads on. [V]</summary>
    internal static double Highest(DistributionBox box, IReadOnlyList<(FeedCircuit Circuit, RailVolts Rail, Load[] Loads)> fed)
    {
        UnregulatedCurve curve = CurveOf(box)!;
        return Settled(box, curve.HighestAt, volts => fed.Sum(f => f.Circuit.AmperesAt(volts, box, f.Rail, f.Loads)));
    }

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
