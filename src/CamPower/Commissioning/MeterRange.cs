using System;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>The accuracy of a meter in one of its ranges: a share of the reading, and so many counts of the last digit.</summary>
/// <remarks>Immutable. Data sheets write it ±(0.5 % + 2).</remarks>
/// <example><code>var volts = new MeterRange(Ratio.FromPercent(0.5), counts: 2, resolution: 0.01);   // 12.00 V: ± 0.08 V</code></example>
public sealed class MeterRange
{
    /// <summary>States it.</summary>
    /// <param name="ofReading">The share of the reading, from 0 to 1. [1]</param>
    /// <param name="counts">How many counts of the last digit, at least 0.</param>
    /// <param name="resolution">What one count is, above 0. [V, A or Ω]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MeterRange(Ratio ofReading, int counts, double resolution)
    {
        Share = Require.Within(ofReading.DecimalFractions, 0, 1, nameof(ofReading), "");
        Counts = (int)Require.NotNegative(counts, nameof(counts), "counts");
        Resolution = Require.Positive(resolution, nameof(resolution), "");
        OfReading = ofReading;
    }

    /// <summary>The share of the reading. [1]</summary>
    public Ratio OfReading { get; }

    /// <summary>How many counts of the last digit.</summary>
    public int Counts { get; }

    /// <summary>What one count is. [V, A or Ω]</summary>
    public double Resolution { get; }

    /// <summary>How far a reading may be off: share times reading, and the counts. [V, A or Ω]</summary>
    /// <param name="reading">The reading, finite. [V, A or Ω]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reading"/> is not finite.</exception>
    /// <example>±(0.5 % + 2) at 12.00: 0.06 + 0.02 = 0.08.</example>
    public double LimitAt(double reading) => LimitOf(Require.Finite(reading, nameof(reading), ""));

    /// <summary>The accuracy as data sheets write it, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"±({Share * 100:G4} % + {Counts})");

    internal double Share { get; }

    internal double LimitOf(double reading) => (Share * Math.Abs(reading)) + (Counts * Resolution);

    /// <summary>The standard uncertainty of a reading: a rectangle of that half width. [V, A or Ω]</summary>
    /// <remarks>Source: <see cref="Sources.UncertaintyGuide"/>.</remarks>
    internal double StandardAt(double reading) => LimitOf(reading) / Math.Sqrt(3);
}
