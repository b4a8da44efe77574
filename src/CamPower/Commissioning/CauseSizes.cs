using System;
using System.Linq;

namespace CamPower.Commissioning;

/// <summary>The sizes that a cause may have, as points that are equally likely: what the likelihood is integrated over.</summary>
/// <remarks>Common practice, no source: what faults look like in the field, each unit as in <see cref="FeedFaults"/> and
/// <see cref="BoxModel"/>.</remarks>
internal sealed class CauseSizes
{
    private const int Points = 10;

    private readonly Func<double, double>? _quantile;

    private CauseSizes(double[] values, Func<double, double>? quantile = null)
    {
        Values = values;
        _quantile = quantile;
    }

    private CauseSizes(Func<double, double> quantile)
        : this([.. Enumerable.Range(0, Points).Select(i => quantile((i + 0.5) / Points))], quantile)
    {
    }

    /// <summary>The cause has no size.</summary>
    internal static CauseSizes One { get; } = new([1]);

    /// <summary>One or both conductors one to four gauge numbers smaller, or copper-clad (1.55 to 1.59 times), or half of the
    /// pairs.</summary>
    internal static CauseSizes Conductor { get; } = new([0.13, 0.29, 0.57, 0.59, 1.0, 1.52]);

    internal static CauseSizes Longer { get; } = Even(0.12, 0.8);

    internal static CauseSizes Joint { get; } = Geometric(0.3, 20);

    internal static CauseSizes Leak { get; } = Geometric(100, 2e5);

    internal static CauseSizes Short { get; } = Geometric(0.02, 0.5);

    internal static CauseSizes Draw { get; } = Even(1.25, 2.5);

    internal static CauseSizes Sag { get; } = Geometric(0.04, 0.35);

    internal static CauseSizes Limit { get; } = Even(0.1, 0.85);

    internal static CauseSizes Battery { get; } = Even(0.82, 0.97);

    internal static CauseSizes Shield { get; } = Geometric(0.5, 5);

    /// <summary>What the leads add to every resistance. [Ω]</summary>
    internal static CauseSizes Leads { get; } = Geometric(0.4, 4);

    /// <summary>The values.</summary>
    internal double[] Values { get; }

    /// <summary>Whether it may have any size in between.</summary>
    internal bool IsContinuous => _quantile is not null;

    internal static CauseSizes Discrete(double[] values) => new(values);

    /// <summary>Off the set point by 3 % to 20 %, up or down. [V]</summary>
    internal static CauseSizes SetPoint(double volts) =>
        new(share => volts * (share < 0.5 ? -0.2 + (0.34 * share) : 0.03 + (0.34 * (share - 0.5))));

    /// <summary>The size that a share of all cases is below.</summary>
    /// <param name="share">At least 0 and below 1.</param>
    internal double Quantile(double share) => _quantile is null ? Values[(int)(share * Values.Length)] : _quantile(share);

    private static CauseSizes Even(double from, double to) => new(share => from + ((to - from) * share));

    private static CauseSizes Geometric(double from, double to) => new(share => from * Math.Pow(to / from, share));
}
