using System;
using CamPower.Tolerance;

namespace CamPower.Commissioning;

/// <summary>What a site gives at a point, before any meter. SI doubles.</summary>
/// <remarks>Immutable.</remarks>
internal sealed class PointForecast
{
    /// <param name="point">The point.</param>
    /// <param name="expected">With every part as it is expected; infinite for an open pair, null without an operating point.</param>
    /// <param name="bounds">The lowest and highest that the ranges allow, and whether they are proven corners.</param>
    /// <param name="perPart">The change with each part of the site, in the order of <see cref="UncertainParts.All"/>; empty for an open
    /// pair.</param>
    /// <param name="parts">The parts.</param>
    internal PointForecast(
        ReadingPoint point, double? expected, (double Lowest, double Highest, bool IsProven) bounds, double[] perPart, UncertainParts parts)
    {
        Point = point;
        Expected = expected;
        (Lowest, Highest, IsProven) = bounds;
        PerPart = perPart;
        double variance = 0;
        for (int i = 0; i < perPart.Length; i++)
        {
            double deviation = perPart[i] * parts.All[i].Range.StandardDeviation;
            variance += deviation * deviation;
        }

        Standard = Math.Sqrt(variance);
    }

    internal ReadingPoint Point { get; }

    internal double? Expected { get; }

    internal double Lowest { get; }

    internal double Highest { get; }

    internal bool IsProven { get; }

    /// <summary>The change with each part of the site. [V, A or Ω per share, or per kelvin]</summary>
    internal double[] PerPart { get; }

    /// <summary>Standard deviation from the sensitivities, the parts being independent.</summary>
    internal double Standard { get; }
}
