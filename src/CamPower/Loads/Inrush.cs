using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>Inrush of a device: the current that charges its input capacitors when power comes.</summary>
/// <remarks>
/// Immutable. A data sheet states the peak, and how long it lasts or its I²t. A peak and a duration count as that current all
/// that time, Î²·t, which is the most that they can mean. It is what the device draws from a stiff source: the cable before it
/// and a supply in current limit only make it less.
/// </remarks>
/// <example>
/// <code>
/// var inrush = new Inrush(peak: ElectricCurrent.FromAmperes(8), duration: Duration.FromMilliseconds(2));   // 0.128 A²·s
/// var dome = new Device("dome", DeviceKind.Camera, draw, dcInput: window, inrush: inrush);
/// </code>
/// </example>
public sealed class Inrush
{
    private const double LeastAmperes = 1e-6, MostAmperes = 1e6, ShortestSeconds = 1e-9, LongestSeconds = 1e6, LeastIntegral = 1e-12,
        MostIntegral = 1e15;

    /// <summary>States a peak and how long it lasts.</summary>
    /// <param name="peak">The largest current, from 1 µA to 1 MA. [A]</param>
    /// <param name="duration">How long until it is over, from 1 ns to 10⁶ s. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Inrush(ElectricCurrent peak, Duration duration)
    {
        PeakAmperes = Require.Within(peak.Amperes, LeastAmperes, MostAmperes, nameof(peak), "A");
        AmpereSquaredSeconds = PeakAmperes * PeakAmperes * Require.Within(
            duration.Seconds, ShortestSeconds, LongestSeconds, nameof(duration), "s");
        Peak = peak;
        Duration = duration;
        Integral = JouleIntegral.FromAmpereSquaredSeconds(AmpereSquaredSeconds);
    }

    /// <summary>States a peak and its I²t.</summary>
    /// <param name="peak">The largest current, from 1 µA to 1 MA. [A]</param>
    /// <param name="integral">Its I²t, from 10⁻¹² to 10¹⁵ A²·s. [A²·s]</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Inrush(ElectricCurrent peak, JouleIntegral integral)
    {
        PeakAmperes = Require.Within(peak.Amperes, LeastAmperes, MostAmperes, nameof(peak), "A");
        AmpereSquaredSeconds = Require.Within(integral.AmpereSquaredSeconds, LeastIntegral, MostIntegral, nameof(integral), "A²·s");
        Peak = peak;
        Integral = integral;
    }

    private Inrush(double peakAmperes, double ampereSquaredSeconds)
    {
        PeakAmperes = peakAmperes;
        AmpereSquaredSeconds = ampereSquaredSeconds;
        Peak = ElectricCurrent.FromAmperes(peakAmperes);
        Integral = JouleIntegral.FromAmpereSquaredSeconds(ampereSquaredSeconds);
    }

    /// <summary>The largest current. [A]</summary>
    public ElectricCurrent Peak { get; }

    /// <summary>How long until it is over, or null where its I²t is stated instead. [s]</summary>
    public Duration? Duration { get; }

    /// <summary>Its I²t: as stated, or the most that peak and duration can mean. [A²·s]</summary>
    public JouleIntegral Integral { get; }

    internal double PeakAmperes { get; }

    internal double AmpereSquaredSeconds { get; }

    /// <summary>How long the peak takes to make the I²t. [s]</summary>
    internal double SecondsAtPeak => AmpereSquaredSeconds / (PeakAmperes * PeakAmperes);

    /// <summary>Peak and I²t in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{PeakAmperes:G4} A, {AmpereSquaredSeconds:G4} A²·s");

    /// <summary>The most that several can be together on top of a current that flows already; null for none.</summary>
    /// <remarks>The current counts as long as the longest of them at its peak.</remarks>
    internal static Inrush? OnTopOf(double runningAmperes, IReadOnlyList<Inrush> switched) => switched.Count == 0 ? null : AtOnce(
        switched.Append(new Inrush(runningAmperes, runningAmperes * runningAmperes * switched.Max(s => s.SecondsAtPeak))));

    /// <summary>The most that several can be together when they begin at one moment; null for none.</summary>
    /// <remarks>
    /// The peaks add up. Of currents i and j the I²t together is ∫i² + 2∫ij + ∫j², and ∫ij is at most √(∫i²·∫j²): the roots of the I²t
    /// add up at most, and do so for inputs that are alike.
    /// </remarks>
    internal static Inrush? AtOnce(IEnumerable<Inrush> inrushes)
    {
        double peak = 0, root = 0;
        foreach (Inrush inrush in inrushes)
        {
            peak += inrush.PeakAmperes;
            root += Math.Sqrt(inrush.AmpereSquaredSeconds);
        }

        return peak > 0 ? new Inrush(peak, root * root) : null;
    }
}
