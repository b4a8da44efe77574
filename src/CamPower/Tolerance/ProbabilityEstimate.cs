using System;
using UnitsNet;

namespace CamPower.Tolerance;

/// <summary>A probability, with how far the number may be off.</summary>
/// <remarks>Immutable. It is as good as the ranges and shapes that it comes from: most of them are common practice.</remarks>
public sealed class ProbabilityEstimate
{
    internal ProbabilityEstimate(double probability, double error, int draws)
    {
        Value = probability;
        Error = error;
        Draws = draws;
    }

    /// <summary>The probability. [%]</summary>
    public Ratio Probability => Ratio.FromPercent(Value * 100);

    /// <summary>Standard error of a Monte Carlo estimate; of a quadrature the difference to one of half the points. [%]</summary>
    /// <remarks>Of n draws with k hits √(p(1 − p)/n), p being (k + 1)/(n + 2): no hit at all still has an error.</remarks>
    public Ratio StandardError => Ratio.FromPercent(Error * 100);

    /// <summary>How many draws it took; 0 where it was integrated.</summary>
    public int Draws { get; }

    /// <summary>Whether it was integrated, not drawn.</summary>
    public bool IsIntegrated => Draws == 0;

    /// <summary>Probability and error in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Value * 100:G4} % ± {Error * 100:G2} %");

    internal double Value { get; }

    internal double Error { get; }

    internal static ProbabilityEstimate OfHits(long hits, int draws)
    {
        double smoothed = (hits + 1.0) / (draws + 2.0);
        return new((double)hits / draws, Math.Sqrt(smoothed * (1 - smoothed) / draws), draws);
    }
}
