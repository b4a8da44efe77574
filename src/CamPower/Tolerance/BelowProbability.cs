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

    /// <summary>Drawn for every device of several circuits at once, each draw being of the whole site.</summary>
    /// <param name="circuits">The circuits, of one site.</param>
    /// <param name="limits">For each circuit the voltage under which each device counts. [V]</param>
    /// <param name="draws">How many draws.</param>
    /// <param name="seed">Which random numbers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    internal static ProbabilityEstimate[][] DrawnAll(
        UncertainCircuit[] circuits, double[][] limits, int draws, ulong seed, CancellationToken cancellationToken)
    {
        int blocks = (draws + DrawsOfABlock - 1) / DrawsOfABlock;
        long[][] hits = Array.ConvertAll(limits, l => new long[l.Length]);
        Parallel.For(0, blocks, new ParallelOptions { CancellationToken = cancellationToken },
            () => Array.ConvertAll(circuits, c => c.Copy()), (block, _, own) =>
            {
                int from = block * DrawsOfABlock, to = Math.Min(draws, from + DrawsOfABlock);
                long[][] found = Array.ConvertAll(limits, l => new long[l.Length]);
                CountHits(own, limits, from, to, seed, found);
                for (int c = 0; c < hits.Length; c++)
                {
                    for (int i = 0; i < found[c].Length; i++) Interlocked.Add(ref hits[c][i], found[c][i]);
                }

                return own;
            }, _ => { });
        return Array.ConvertAll(hits, of => Array.ConvertAll(of, h => ProbabilityEstimate.OfHits(h, draws)));
    }

    /// <summary>Counts for each device of each circuit how many of a range of draws are below its limit.</summary>
    internal static void CountHits(UncertainCircuit[] circuits, double[][] limits, int from, int to, ulong seed, long[][] hits)
    {
        UncertainParts parts = circuits[0].Parts;
        int[] relevant = [.. circuits.SelectMany(c => c.Relevant).Distinct().OrderBy(place => place)];
        double[] x = (double[])parts.Expected.Clone();
        double[][] volts = Array.ConvertAll(limits, l => new double[l.Length]);
        for (int draw = from; draw < to; draw++)
        {
            Draw(parts, relevant, seed, draw, x);
            for (int c = 0; c < circuits.Length; c++)
            {
                double[] own = volts[c];
                bool isSolved = circuits[c].TrySolve(x, circuits[c].Loads, own);
                for (int i = 0; i < own.Length; i++)
                {
                    if (!isSolved || own[i] < limits[c][i]) hits[c][i]++;
                }
            }
        }
    }

    /// <summary>Drawn: a sum of whole numbers, so that no order of threads changes it.</summary>
    internal static ProbabilityEstimate Drawn(
        UncertainCircuit circuit, int device, double volts, int draws, ulong seed, CancellationToken cancellationToken)
    {
        var limits = new double[circuit.Loads.Length];
        limits[device] = volts;
        return DrawnAll([circuit], [limits], draws, seed, cancellationToken)[0][device];
    }

    /// <summary>Fills in the deviations of a draw: that of a part depends on its place in the site alone.</summary>
    internal static void Draw(UncertainParts parts, int[] places, ulong seed, int draw, double[] deviations)
    {
        uint known = uint.MaxValue;
        double first = 0, second = 0;
        foreach (int place in places)
        {
            uint pair = (uint)place / 2;
            if (pair != known) CounterRandom.Pair(seed, (ulong)draw, pair, out first, out second);
            known = pair;
            deviations[place] = parts.All[place].Range.Quantile(place % 2 == 0 ? first : second);
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
