using System;
using System.Linq;
using System.Threading;
using System.Threading.Tasks;

namespace CamPower.Tolerance;

/// <summary>The probability that a device of a circuit has less than a voltage. SI doubles.</summary>
internal static class BelowProbability
{
    private const int MostIntegrated = 3, Points = 64, Halvings = 60, DrawsOfABlock = 4096;

    internal static ProbabilityEstimate Of(
        UncertainCircuit circuit, int device, double volts, int draws, ulong seed, CancellationToken cancellationToken)
    {
        return circuit.Relevant.Length <= MostIntegrated && WorstCorners.Of(circuit).IsProven
            ? Integrated(circuit, device, volts)
            : Drawn(circuit, device, volts, draws, seed, cancellationToken);
    }

    /// <summary>Drawn: a sum of whole numbers, so that no order of threads changes it.</summary>
    internal static ProbabilityEstimate Drawn(
        UncertainCircuit circuit, int device, double volts, int draws, ulong seed, CancellationToken cancellationToken)
    {
        int blocks = (draws + DrawsOfABlock - 1) / DrawsOfABlock;
        long hits = 0;
        Parallel.For(0, blocks, new ParallelOptions { CancellationToken = cancellationToken }, circuit.Copy, (block, _, own) =>
        {
            int from = block * DrawsOfABlock, to = Math.Min(draws, from + DrawsOfABlock);
            Interlocked.Add(ref hits, HitsOf(own, device, volts, from, to, seed));
            return own;
        }, _ => { });
        return ProbabilityEstimate.OfHits(hits, draws);
    }

    /// <summary>How many of a range of draws are below.</summary>
    internal static long HitsOf(UncertainCircuit circuit, int device, double volts, int from, int to, ulong seed)
    {
        double[] x = (double[])circuit.Parts.Expected.Clone(), deviceVolts = new double[circuit.Loads.Length];
        long hits = 0;
        for (int draw = from; draw < to; draw++)
        {
            Draw(circuit, seed, draw, x);
            if (!circuit.TrySolve(x, circuit.Loads, deviceVolts) || deviceVolts[device] < volts) hits++;
        }

        return hits;
    }

    /// <summary>Fills in the deviations of a draw: that of a part depends on its place in the site alone.</summary>
    internal static void Draw(UncertainCircuit circuit, ulong seed, int draw, double[] deviations)
    {
        uint known = uint.MaxValue;
        double first = 0, second = 0;
        foreach (int place in circuit.Relevant)
        {
            uint pair = (uint)place / 2;
            if (pair != known) CounterRandom.Pair(seed, (ulong)draw, pair, out first, out second);
            known = pair;
            deviations[place] = circuit.Parts.All[place].Range.Quantile(place % 2 == 0 ? first : second);
        }
    }

    /// <summary>Integrated: over all parts but one by Gauss and Legendre on their probabilities, over the last in closed form.</summary>
    /// <remarks>The voltage is monotone in each part, so that for given others there is one threshold of the last, and the share of its
    /// values beyond that is its distribution there.</remarks>
    internal static ProbabilityEstimate Integrated(UncertainCircuit circuit, int device, double volts)
    {
        double fine = WithPoints(circuit, device, volts, Points), coarse = WithPoints(circuit, device, volts, Points / 2);
        return new ProbabilityEstimate(fine, Math.Abs(fine - coarse), draws: 0);
    }

    private static double WithPoints(UncertainCircuit circuit, int device, double volts, int points)
    {
        double[] x = (double[])circuit.Parts.Expected.Clone(), deviceVolts = new double[circuit.Loads.Length];
        int[] parts = circuit.Relevant;
        if (parts.Length == 0) return IsBelow() ? 1 : 0;
        (double[] at, double[] weights) = GaussLegendre.OnUnit(points);

        // The last is the one whose ends differ most, so that what is left of the others is smooth.
        int last = parts.OrderByDescending(SpanOf).First();
        int[] others = [.. parts.Where(p => p != last)];
        return Over(0);

        double Over(int depth)
        {
            if (depth == others.Length) return ShareBelow();
            double sum = 0;
            for (int i = 0; i < points; i++)
            {
                x[others[depth]] = circuit.Parts.All[others[depth]].Range.Quantile(at[i]);
                sum += weights[i] * Over(depth + 1);
            }

            return sum;
        }

        double ShareBelow()
        {
            UncertainRange range = circuit.Parts.All[last].Range;
            bool atLow = IsBelowAt(range.Low), atHigh = IsBelowAt(range.High);
            if (atLow == atHigh) return atLow ? 1 : 0;
            double low = range.Low, high = range.High;
            for (int halving = 0; halving < Halvings; halving++)
            {
                double middle = (low + high) / 2;
                if (IsBelowAt(middle) == atLow) low = middle;
                else high = middle;
            }

            double below = range.ProbabilityBelow((low + high) / 2);
            return atLow ? below : 1 - below;
        }

        bool IsBelowAt(double deviation)
        {
            x[last] = deviation;
            return IsBelow();
        }

        bool IsBelow() => !circuit.TrySolve(x, circuit.Loads, deviceVolts) || deviceVolts[device] < volts;

        double SpanOf(int place)
        {
            double[] ends = (double[])circuit.Parts.Expected.Clone();
            ends[place] = circuit.Parts.All[place].Range.Low;
            double atLow = circuit.TrySolve(ends, circuit.Loads, deviceVolts) ? deviceVolts[device] : 0;
            ends[place] = circuit.Parts.All[place].Range.High;
            return Math.Abs(atLow - (circuit.TrySolve(ends, circuit.Loads, deviceVolts) ? deviceVolts[device] : 0));
        }
    }
}
