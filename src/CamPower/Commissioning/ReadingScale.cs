using System;

namespace CamPower.Commissioning;

/// <summary>The scale on which readings and predictions are compared: volts and amperes as they are, ohms by their logarithm.</summary>
internal static class ReadingScale
{
    // A loop of no resistance at all is still a number, and so is no loop at all.
    private const double LeastOhms = 0.03, BeyondRangeOhms = 2e5, BeyondRangeSigma = 1.2;

    private const double LeastUnsteadyVolts = 1, LeastUnsteadyAmperes = 0.1;

    /// <summary>The least share of what it would be that a meter shows of what jumps about. Common practice, no source.</summary>
    internal const double LeastUnsteady = 0.3;

    /// <summary>Whether a resistance is beyond what a meter tells from an open pair. [Ω]</summary>
    internal static bool IsBeyondRange(double ohms) => ohms > BeyondRangeOhms;

    internal static double Of(MeterQuantity kind, double value) =>
        kind == MeterQuantity.Ohms ? Math.Log(Math.Min(Math.Max(value, 0), FeedFaults.OpenOhms) + LeastOhms) : value;

    /// <summary>What a meter shows on average of what jumps about: anything from a part of it up to all.</summary>
    internal static double UnsteadyMean(double value) => value * (1 + LeastUnsteady) / 2;

    /// <summary>Standard deviation on the scale of a reading whose own one is known, where a certain value is predicted.</summary>
    internal static double Sigma(MeterQuantity kind, double sigma, double predicted, bool isUnsteady)
    {
        if (isUnsteady)
        {
            double rectangle = Math.Abs(predicted) * (1 - LeastUnsteady) / Math.Sqrt(12);
            return Math.Max(kind == MeterQuantity.Volts ? LeastUnsteadyVolts : LeastUnsteadyAmperes, FeedTolerance.Widening * rectangle);
        }

        if (kind != MeterQuantity.Ohms) return sigma;
        return IsBeyondRange(predicted) ? BeyondRangeSigma : sigma / (predicted + LeastOhms);
    }
}
