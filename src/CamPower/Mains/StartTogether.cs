using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower.Mains;

/// <summary>All supplies on a breaker switched on at one moment, against the band in which the breaker trips at once.</summary>
/// <remarks>
/// Immutable. Peaks and I²t are added as if all met at one crest of a stiff line, which is the most that they can make: the wires to the
/// receptacle make them less. The band is of sinusoidal RMS. A peak over √2 below its lower edge does not trip the breaker. Above it, and
/// over in less than half a cycle, only the maker of the breaker can say. What else starts on the circuit does not count.
/// </remarks>
/// <example>
/// <code>
/// StartTogether cold = assessment.StudyBreakers()[0].Cold;
/// Console.WriteLine($"{cold}: at most {cold.MostAtOnce} at once");
/// </code>
/// </example>
public sealed class StartTogether
{
    private const string CurveNotStated = "curve of the breaker for less than half a cycle";

    private readonly IReadOnlyList<double> _peaks;
    private readonly CircuitBreaker _breaker;
    private readonly string? _missing;
    private readonly string _how;
    private readonly double? _ampereSquaredSeconds;

    /// <param name="breaker">The breaker.</param>
    /// <param name="how">Cold or warm, as it is printed.</param>
    /// <param name="peaks">The peak of each supply; null where it is not stated. [A]</param>
    /// <param name="integrals">The I²t of each supply; null where it is not stated. [A²·s]</param>
    internal StartTogether(CircuitBreaker breaker, string how, IReadOnlyList<double?> peaks, IReadOnlyList<double?> integrals)
    {
        _breaker = breaker;
        _how = how;
        _peaks = [.. peaks.OfType<double>()];
        _missing = _peaks.Count == peaks.Count ? null : $"{how} inrush current of the supply";

        // The roots of the I²t add up at most: see Inrush.AtOnce.
        if (integrals.All(i => i is not null)) _ampereSquaredSeconds = Square(integrals.Sum(i => Math.Sqrt(i!.Value)));
        KnownPeakAmperes = _peaks.Sum();
    }

    /// <summary>The largest current that all can make together; null where the peak of one is not stated. [A]</summary>
    public ElectricCurrent? Peak => _missing is null ? ElectricCurrent.FromAmperes(KnownPeakAmperes) : null;

    /// <summary>The largest I²t that all can make together; null where that of one is not stated. [A²·s]</summary>
    /// <remarks>Of currents i and j it is at most (√∫i² + √∫j²)².</remarks>
    public JouleIntegral? Integral =>
        _ampereSquaredSeconds is double known ? JouleIntegral.FromAmpereSquaredSeconds(known) : null;

    /// <summary>The peak over √2 against the lower edge of the band: whether the breaker holds.</summary>
    /// <remarks>Violated only where the pulse lasts half a cycle and longer and is above the upper edge. Unknown between, and where a peak
    /// is not stated.</remarks>
    public Judgment Holds
    {
        get
        {
            if (MayTrip && !IsTrippedForCertain) return Judgment.Unknown(CurveNotStated);
            return _missing is string missing ? Judgment.Unknown(missing) : Judgment.AtMost(
                KnownRmsAmperes, _breaker.HoldsAmperes, _breaker.HoldsAmperes, a => ElectricCurrent.FromAmperes(a));
        }
    }

    /// <summary>How many of the supplies may start at once, whichever they are, so that the breaker does not trip; null where the peak of
    /// one is not stated.</summary>
    public int? MostAtOnce
    {
        get
        {
            if (_missing is not null) return null;
            double sum = 0;
            return _peaks.OrderByDescending(p => p)
                .TakeWhile(p => !Limits.IsAbove((sum += p) / Math.Sqrt(2), _breaker.HoldsAmperes)).Count();
        }
    }

    /// <summary>Whether what is known is above the lower edge of the band already.</summary>
    internal bool MayTrip => Limits.IsAbove(KnownRmsAmperes, _breaker.HoldsAmperes);

    /// <summary>Whether the pulse is known to last half a cycle and longer, for which the band holds.</summary>
    internal bool LastsHalfACycle => _ampereSquaredSeconds is double integral
        && integral / Square(KnownPeakAmperes) >= SupplyConstants.HalfCycle.Value / 1000;

    internal ElectricCurrent KnownRms => ElectricCurrent.FromAmperes(KnownRmsAmperes);

    internal double KnownPeakAmperes { get; }

    internal bool IsKnown => _missing is null;

    private double KnownRmsAmperes => KnownPeakAmperes / Math.Sqrt(2);

    private bool IsTrippedForCertain => LastsHalfACycle && Limits.IsAbove(KnownRmsAmperes, _breaker.TripsAmperes);

    /// <summary>How it was worked out.</summary>
    /// <exception cref="InvalidOperationException">The peak of a supply is not stated.</exception>
    public Derivation Explain() => new($"{_how} start of all supplies on {_breaker}", Steps(), ToString());

    /// <summary>The peak and how many may start at once, or what is not stated, in the invariant culture; never throws.</summary>
    public override string ToString() => _missing is string missing
        ? FormattableString.Invariant($"{_how} start: peak at least {KnownPeakAmperes:0.#} A; not stated: {missing}")
        : FormattableString.Invariant($"{_how} start: peak {KnownPeakAmperes:0.#} A, {Verdict}; ")
            + (MostAtOnce == 0 && _peaks.Count > 0
                ? "the largest alone may trip it"
                : FormattableString.Invariant($"{MostAtOnce} of {_peaks.Count} may start at once"));

    private string Verdict => !MayTrip ? "the breaker holds" : IsTrippedForCertain ? "the breaker trips" : "the breaker may trip";

    private IEnumerable<DerivationStep> Steps()
    {
        if (_missing is not null) throw new InvalidOperationException($"There is nothing to explain: {this}.");
        yield return new("Ip", "The peaks of all supplies together", "sum of the peaks", @"\hat I = \sum \hat I_k",
            _peaks.Count == 0 ? "0" : string.Join(" + ", _peaks.Select(Number)), KnownPeakAmperes, "A", Sources.Kirchhoff);
        yield return new("I", "The sine of that crest, RMS", "Ip/sqrt(2)", @"I = \frac{\hat I}{\sqrt{2}}",
            $"{Number(KnownPeakAmperes)}/sqrt(2)", KnownRmsAmperes, "A", Sources.SineCrest);
        yield return new("I1", "Lower edge of the band of the breaker", "m1*In", @"I_1 = m_1\,I_n",
            $"{Number(_breaker.InstantaneousFrom)}*{Number(_breaker.RatedAmperes)}", _breaker.HoldsAmperes, "A", Sources.BreakerBands);
        yield return new("I2", "Upper edge of the band of the breaker", "m2*In", @"I_2 = m_2\,I_n",
            $"{Number(_breaker.InstantaneousTo)}*{Number(_breaker.RatedAmperes)}", _breaker.TripsAmperes, "A", Sources.BreakerBands);
    }

    private static double Square(double value) => value * value;
}
