using System;
using UnitsNet;

namespace CamPower.Tolerance;

/// <summary>How far a quantity may be off what the site states, and how likely the values in between are.</summary>
/// <remarks>
/// Immutable. Symmetrical about its middle, which is what is expected. Standard deviations of the shapes:
/// <see cref="Sources.UncertaintyGuide"/>.
/// </remarks>
/// <example>
/// <code>
/// UncertainRange asBuilt = UncertainRange.OfShare(Ratio.FromPercent(-2), Ratio.FromPercent(8), UncertaintyShape.Uniform);
/// </code>
/// </example>
public sealed class UncertainRange
{
    private const double MostKelvins = 100, HighestShare = 10, SigmasToTheEnd = 3;

    // Φ(3) − Φ(−3), and the variance of a normal distribution cut off at three standard deviations.
    private const double WithinThreeSigmas = 0.99730020393673981, CutVariance = 0.97333692466254519;

    private UncertainRange(double low, double high, UncertaintyShape shape, Citation source, bool isInKelvins)
    {
        Low = low;
        High = high;
        Shape = Require.Known(shape, nameof(shape));
        Source = source;
        IsInKelvins = isInKelvins;
    }

    /// <summary>How likely the values inside are.</summary>
    public UncertaintyShape Shape { get; }

    /// <summary>Where the range comes from.</summary>
    public Citation Source { get; }

    /// <summary>Whether it is a range of temperature; otherwise it is one of shares.</summary>
    public bool IsInKelvins { get; }

    /// <summary>The low end. [1, or K]</summary>
    public double Low { get; }

    /// <summary>The high end. [1, or K]</summary>
    public double High { get; }

    /// <summary>What is expected: the middle. [1, or K]</summary>
    public double Expected => (Low + High) / 2;

    /// <summary>Standard deviation. [1, or K]</summary>
    /// <example>Uniform from -1 % to 1 %: 0.577 %.</example>
    public double StandardDeviation => (High - Low) / 2 / Shape switch
    {
        UncertaintyShape.Uniform => Math.Sqrt(3),
        UncertaintyShape.Triangular => Math.Sqrt(6),
        _ => SigmasToTheEnd / Math.Sqrt(CutVariance),
    };

    /// <summary>A range of shares: how far a quantity is off what the site states, over what it states.</summary>
    /// <param name="lowest">The low end, from -1 to 10. [1]</param>
    /// <param name="highest">The high end, from <paramref name="lowest"/> to 10. [1]</param>
    /// <param name="shape">How likely the values inside are.</param>
    /// <param name="source">Where it comes from; null where the user states it.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is outside its range, or the shape is none of those there are.</exception>
    public static UncertainRange OfShare(Ratio lowest, Ratio highest, UncertaintyShape shape, Citation? source = null)
    {
        double low = Require.Within(lowest.DecimalFractions, -1, HighestShare, nameof(lowest), "");
        double high = Require.Within(highest.DecimalFractions, low, HighestShare, nameof(highest), "");
        return new(low, high, shape, source ?? Sources.StatedByUser, isInKelvins: false);
    }

    /// <summary>A range of temperature: how far conductors are off the temperature of the condition.</summary>
    /// <param name="lowest">The low end, from -100 K to 100 K. [K]</param>
    /// <param name="highest">The high end, from <paramref name="lowest"/> to 100 K. [K]</param>
    /// <param name="shape">How likely the values inside are.</param>
    /// <param name="source">Where it comes from; null where the user states it.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is outside its range, or the shape is none of those there are.</exception>
    public static UncertainRange OfTemperature(
        TemperatureDelta lowest, TemperatureDelta highest, UncertaintyShape shape, Citation? source = null)
    {
        double low = Require.Within(lowest.Kelvins, -MostKelvins, MostKelvins, nameof(lowest), "K");
        double high = Require.Within(highest.Kelvins, low, MostKelvins, nameof(highest), "K");
        return new(low, high, shape, source ?? Sources.StatedByUser, isInKelvins: true);
    }

    /// <summary>Both ends and the shape, in the invariant culture; never throws.</summary>
    public override string ToString() => IsInKelvins
        ? FormattableString.Invariant($"{Low:G4} K to {High:G4} K, {Word}")
        : FormattableString.Invariant($"{Low * 100:G4} % to {High * 100:G4} %, {Word}");

    internal bool HasWidth => High > Low;

    /// <summary>A range of shares in plain numbers.</summary>
    internal static UncertainRange Of(double low, double high, UncertaintyShape shape, Citation source) =>
        new(low, high, shape, source, isInKelvins: false);

    /// <summary>The value below which a share of all values lies: the inverse of the distribution.</summary>
    /// <param name="probability">Above 0 and below 1.</param>
    internal double Quantile(double probability) => Expected + ((High - Low) / 2 * UnitQuantile(probability));

    /// <summary>The share of all values below a value.</summary>
    internal double ProbabilityBelow(double value)
    {
        if (!HasWidth) return value > Low ? 1 : 0;
        double at = (value - Expected) / ((High - Low) / 2);
        if (at <= -1) return 0;
        if (at >= 1) return 1;
        return Shape switch
        {
            UncertaintyShape.Uniform => (1 + at) / 2,
            UncertaintyShape.Triangular => at < 0 ? (1 + at) * (1 + at) / 2 : 1 - ((1 - at) * (1 - at) / 2),
            _ => 0.5 + ((NormalDistribution.Below(SigmasToTheEnd * at) - 0.5) / WithinThreeSigmas),
        };
    }

    private string Word => Shape switch
    {
        UncertaintyShape.Uniform => "uniform",
        UncertaintyShape.Triangular => "triangular",
        _ => "normal",
    };

    // From -1 to 1.
    private double UnitQuantile(double p) => Shape switch
    {
        UncertaintyShape.Uniform => (2 * p) - 1,
        UncertaintyShape.Triangular => p < 0.5 ? Math.Sqrt(2 * p) - 1 : 1 - Math.Sqrt(2 * (1 - p)),
        _ => NormalDistribution.Quantile(0.5 + ((p - 0.5) * WithinThreeSigmas)) / SigmasToTheEnd,
    };
}
