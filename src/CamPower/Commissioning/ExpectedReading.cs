using System;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>What a meter should show at a point: the expected value, the band, what to do first and how to do it safely.</summary>
/// <remarks>Immutable. The band is the worst case of the tolerances, widened by the accuracy of the meter: a sound site as stated never
/// reads outside it.</remarks>
public sealed class ExpectedReading
{
    // What a meter may show at 0. [V, A or Ω]
    private readonly double _countsSi;

    internal ExpectedReading(PointForecast forecast, Meter meter, (double Below, double Above) impossible, string step,
        Func<double, string> safety)
    {
        Forecast = forecast;
        MeterRange range = meter.RangeFor(forecast.Point.Kind);
        bool isResistance = range == meter.Ohms;
        double leads = isResistance ? meter.LeadOhms : 0, contacts = isResistance ? meter.ContactOhms : 0;
        ExpectedSi = forecast.Expected + leads + (contacts / 2);
        LowestSi = forecast.Lowest + leads - range.LimitOf(forecast.Lowest + leads);
        if (isResistance && forecast.PerPart.Length == 0) LowestSi = forecast.Lowest;
        else if (forecast.Lowest >= 0) LowestSi = Math.Max(0, LowestSi);
        _countsSi = range.LimitOf(0);
        double highest = forecast.Highest + leads + contacts;
        HighestSi = double.IsInfinity(highest) ? highest : highest + range.LimitOf(highest);
        MeterStandard = ExpectedSi is double at && !double.IsInfinity(at)
            ? Math.Sqrt(Square(range.StandardAt(at)) + Square(contacts / Math.Sqrt(12)))
            : 0;
        (ImpossibleBelow, ImpossibleAbove) = impossible;
        Step = step;
        Safety = safety(HighestSi);
    }

    /// <summary>What is read, where and in which state.</summary>
    public ReadingPoint Point => Forecast.Point;

    /// <summary>The expected value; null where an open pair is expected, and where the circuit has no operating point. [V, A or
    /// Ω]</summary>
    public IQuantity? Expected => ExpectedSi is double value && !double.IsInfinity(value) ? Point.QuantityOf(value) : null;

    /// <summary>The lowest value of the band; not below 0 where the circuit gives nothing below 0. [V, A or Ω]</summary>
    public IQuantity Lowest => Point.QuantityOf(LowestSi);

    /// <summary>The highest value of the band; null where there is none. [V, A or Ω]</summary>
    public IQuantity? Highest => double.IsInfinity(HighestSi) ? null : Point.QuantityOf(HighestSi);

    /// <summary>Standard uncertainty of the reading, of the site and the meter together; 0 where nothing is expected. [V, A or Ω]</summary>
    /// <remarks>Source: <see cref="Sources.UncertaintyGuide"/>.</remarks>
    public IQuantity StandardUncertainty => Point.QuantityOf(Math.Sqrt(Square(Forecast.Standard) + Square(MeterStandard)));

    /// <summary>Whether the band comes from corners that are proven to be the worst; otherwise from bounds.</summary>
    public bool IsProven => Forecast.IsProven;

    /// <summary>What to do, and where to put the leads.</summary>
    public string Step { get; }

    /// <summary>What keeps it safe.</summary>
    public string Safety { get; }

    /// <summary>Judges a reading of this point.</summary>
    /// <param name="reading">The reading.</param>
    /// <exception cref="ArgumentNullException"><paramref name="reading"/> is null.</exception>
    /// <exception cref="ArgumentException">It is a reading of another point.</exception>
    public ReadingVerdict Judge(MeterReading reading)
    {
        if (!Require.NotNull(reading, nameof(reading)).Point.Equals(Point))
        {
            throw new ArgumentException($"The reading is of {reading.Point}, not of {Point}.", nameof(reading));
        }

        if (reading.Si < ImpossibleBelow || reading.Si > ImpossibleAbove) return ReadingVerdict.Impossible;

        // A meter may show a count or two below 0.
        double shown = LowestSi == 0 && reading.Si >= -_countsSi ? Math.Max(0, reading.Si) : reading.Si;
        return shown >= LowestSi && shown <= HighestSi ? ReadingVerdict.Inside : ReadingVerdict.Outside;
    }

    /// <summary>Point and band in the invariant culture; never throws.</summary>
    public override string ToString() => double.IsInfinity(HighestSi)
        ? FormattableString.Invariant($"{Point}: at least {LowestSi:0.##} {ReadingWords.UnitOf(Point.Kind)}")
        : FormattableString.Invariant($"{Point}: {LowestSi:0.00} to {HighestSi:0.00} {ReadingWords.UnitOf(Point.Kind)}");

    /// <summary>What the site gives there, before the meter.</summary>
    private PointForecast Forecast { get; }

    /// <summary>What the meter is expected to show: infinite for an open pair, null without an operating point. [V, A or Ω]</summary>
    internal double? ExpectedSi { get; }

    internal double LowestSi { get; }

    internal double HighestSi { get; }

    /// <summary>The standard uncertainty that the meter brings. [V, A or Ω]</summary>
    private double MeterStandard { get; }

    /// <summary>Below this no wiring reads: a short reads as little as 0, but for the counts of the meter. [V, A or Ω]</summary>
    private double ImpossibleBelow { get; }

    /// <summary>Above this no wiring reads. [V, A or Ω]</summary>
    private double ImpossibleAbove { get; }

    private static double Square(double value) => value * value;
}
