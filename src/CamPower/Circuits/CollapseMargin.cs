using System;
using System.Linq;

namespace CamPower.Circuits;

/// <summary>The factor by which the constant-power shares of a network could grow before its operating point is lost.</summary>
/// <remarks>
/// Along the branch from no constant power, the voltages near the fold change as the square root of the distance to
/// it, so that (dV/dλ)⁻² goes to zero as a straight line; for one load it is a straight line all the way. Each
/// point found gives the next a better estimate of where that is; a point not found halves the way to it.
/// </remarks>
internal static class CollapseMargin
{
    private const int MostSteps = 200;
    private const double Agreement = 1e-11, Narrow = 1e-11, NearFold = 1e-2, TowardsFold = 0.9, LeastAdvance = 1e-7, Beyond = 1e-6, Unlimited = 1e15;

    internal static double Of(OperatingPointSearch search)
    {
        if (!search.Loads.Rows.Any(row => row.WattsPerScale > 0)) return double.PositiveInfinity;
        if (!search.TryFind(0)) return 0;

        double reached = 0, slope = Steepness(search, out double next), lost = double.PositiveInfinity, fold = double.PositiveInfinity;
        for (int k = 0; k < MostSteps && reached < lost * (1 - Narrow); k++)
        {
            if (next > Unlimited) return double.PositiveInfinity;
            if (!search.TryReach(next))
            {
                lost = next;
                next = reached + ((lost - reached) / 2);
                continue;
            }

            // No straight line starts at infinity, where no voltage moved: a load that its current share still sets.
            double steeper = Steepness(search, out _), last = fold;
            fold = steeper < slope && !double.IsInfinity(slope) ? next + (steeper * (next - reached) / (slope - steeper)) : double.PositiveInfinity;
            (reached, slope) = (next, steeper);
            if (fold - reached < NearFold * fold && Math.Abs(fold - last) <= Agreement * fold && fold <= lost)
            {
                if (!search.HasSeveralSources || !search.TryReach(fold * (1 + Beyond))) return fold;

                // Another source came on before the fold of those that delivered: from here on it is another branch.
                reached = fold * (1 + Beyond);
                slope = Steepness(search, out double further);
                (next, lost, fold) = (reached + further, double.PositiveInfinity, double.PositiveInfinity);
                continue;
            }

            next = double.IsInfinity(fold) ? 2 * reached : reached + Math.Max(TowardsFold * (fold - reached), LeastAdvance * reached);
            if (next >= lost) next = reached + ((lost - reached) / 2);
        }

        return reached;
    }

    // The sum of (dV/dλ)², as its inverse; and half of where one load that behaved so would fold: V/4|dV/dλ|.
    private static double Steepness(OperatingPointSearch search, out double firstGuess)
    {
        var voltsPerScale = new double[search.Volts.Length];
        firstGuess = 0;
        if (!search.TryTangent(voltsPerScale)) return 0;
        double sum = 0, guess = double.PositiveInfinity;
        for (int i = 0; i < voltsPerScale.Length; i++)
        {
            double change = Math.Abs(voltsPerScale[i]);
            sum += change * change;
            if (change > 0) guess = Math.Min(guess, search.Volts[i] / (8 * change));
        }

        firstGuess = double.IsInfinity(guess) ? 1 : guess;
        return sum > 0 ? 1 / sum : double.PositiveInfinity;
    }
}
