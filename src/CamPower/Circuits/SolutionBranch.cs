using System;

namespace CamPower.Circuits;

/// <summary>The operating points that follow each other without a jump as the constant-power components of a network grow.</summary>
/// <remarks>
/// The voltages near the fold where a branch ends change as the square root of the distance to it, so that (dV/dλ)⁻²
/// goes to zero as a straight line; for one load it is a straight line all the way. Each point found gives the
/// next a better estimate of where that is; a point not found halves the way to it.
/// </remarks>
internal static class SolutionBranch
{
    private const int MostSteps = 200;
    private const double Agreement = 1e-11, Narrow = 1e-11, NearFold = 1e-2, TowardFold = 0.9, LeastAdvance = 1e-7, Unlimited = 1e15;

    /// <summary>The scale at which the branch that holds the point last found ends, or <paramref name="upTo"/> where it goes so
    /// far.</summary>
    /// <param name="search">Holds the point; afterwards the last that was reached.</param>
    /// <param name="from">The scale at that point.</param>
    /// <param name="upTo">How far to follow the branch.</param>
    internal static double End(OperatingPointSearch search, double from, double upTo = double.PositiveInfinity)
    {
        double reached = from, slope = Steepness(search, out double ahead), lost = double.PositiveInfinity, fold = double.PositiveInfinity;
        double next = double.IsInfinity(upTo) ? from + ahead : upTo;
        for (int k = 0; k < MostSteps && reached < lost * (1 - Narrow); k++)
        {
            if (next > Unlimited) return double.PositiveInfinity;
            NetworkPlan before = search.Plan;
            if (!search.TryMove(next))
            {
                lost = next;
                next = reached + ((lost - reached) / 2);
                continue;
            }

            if (next >= upTo) return upTo;

            // With other sources the branch folds elsewhere.
            if (search.Plan != before) (slope, lost, fold) = (double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);

            // No straight line starts at infinity, where no voltage moved: a load that its current component still sets.
            double steeper = Steepness(search, out _), last = fold;
            fold = steeper < slope && !double.IsInfinity(slope)
                ? next + (steeper * (next - reached) / (slope - steeper))
                : double.PositiveInfinity;
            (reached, slope) = (next, steeper);
            if (fold < upTo && fold - reached < NearFold * fold && Math.Abs(fold - last) <= Agreement * fold && fold <= lost)
            {
                if (!search.TryPass(fold)) return fold;

                // Another source came on before the fold of those that delivered: the branch goes on with it.
                slope = Steepness(search, out ahead);
                (reached, next, lost, fold) = (fold, fold + ahead, double.PositiveInfinity, double.PositiveInfinity);
            }
            else
            {
                next = double.IsInfinity(fold) ? 2 * reached
                    : fold >= upTo ? upTo
                    : reached + Math.Max(TowardFold * (fold - reached), LeastAdvance * reached);
                if (next >= lost) next = reached + ((lost - reached) / 2);
            }

            next = Math.Min(next, upTo);
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
