using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower;

/// <summary>An electronic limit: it holds the current at a set value, and opens when that has lasted.</summary>
/// <remarks>
/// Immutable. Below the least value that its tolerance allows it does nothing; from the greatest on it limits and opens for certain;
/// between them it may. After it opens, the limit tries again after each pause, or it stays open until someone resets it. It limits what
/// output capacitors discharge as well: it is faster than they are. All values come from the data sheet.
/// </remarks>
/// <example>
/// <code>
/// var limit = new ElectronicLimit("output limit", ElectricCurrent.FromAmperes(1.5), tolerance: Ratio.FromPercent(10),
///     opensWithin: Duration.FromMilliseconds(50), resistance: ElectricResistance.FromMilliohms(40),
///     voltageRating: ElectricPotential.FromVolts(30), retriesAfter: Duration.FromSeconds(2));
/// OpeningTimes opening = limit.OpeningAt(ElectricCurrent.FromAmperes(4), Temperature.FromDegreesCelsius(40));   // operates, by 0.05 s
/// </code>
/// </example>
public sealed class ElectronicLimit : ProtectiveDevice
{
    private readonly double _leastAmperes, _mostAmperes, _openSeconds, _earliestSeconds, _ohms;

    /// <summary>Describes an electronic limit as its data sheet does.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="limit">The current that it holds, above 0. [A]</param>
    /// <param name="tolerance">How far that current may be off, from 0 to 0.9. [1]</param>
    /// <param name="opensWithin">It has opened when the limit has lasted so long, above 0. [s]</param>
    /// <param name="resistance">Its resistance while it carries current without limiting, at least 0. [Ω]</param>
    /// <param name="voltageRating">The highest voltage that it interrupts, above 0. [V]</param>
    /// <param name="retriesAfter">The pause until it tries again, above 0; null where it stays open until it is reset. [s]</param>
    /// <param name="opensNotBefore">Its shortest operating time: it stays closed until the limit has lasted so long. From 0 to
    /// <paramref name="opensWithin"/>; null where it is not stated. [s]</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public ElectronicLimit(string name, ElectricCurrent limit, Ratio tolerance, Duration opensWithin, ElectricResistance resistance,
        ElectricPotential voltageRating, Duration? retriesAfter = null, Duration? opensNotBefore = null)
        : base(name, voltageRating, breakingCapacity: null)
    {
        double amperes = Require.Positive(limit.Amperes, nameof(limit), "A");
        double share = Require.Within(tolerance.DecimalFractions, 0, 0.9, nameof(tolerance), "");
        _leastAmperes = amperes * (1 - share);
        _mostAmperes = amperes * (1 + share);
        _openSeconds = Require.Positive(opensWithin.Seconds, nameof(opensWithin), "s");
        _ohms = Require.NotNegative(resistance.Ohms, nameof(resistance), "Ω");
        PauseSeconds = retriesAfter is Duration pause
            ? Require.Positive(pause.Seconds, nameof(retriesAfter), "s")
            : double.PositiveInfinity;
        if (opensNotBefore is Duration earliest)
        {
            _earliestSeconds = Require.Within(earliest.Seconds, 0, _openSeconds, nameof(opensNotBefore), "s");
        }

        MinimumResistance = resistance;
        OpensNotBefore = opensNotBefore;
        Limit = limit;
        Tolerance = tolerance;
        OpensWithin = opensWithin;
        RetriesAfter = retriesAfter;
    }

    /// <summary>The current that it holds. [A]</summary>
    public ElectricCurrent Limit { get; }

    /// <summary>Tolerance of that current.</summary>
    public Ratio Tolerance { get; }

    /// <summary>It has opened when the limit has lasted so long. [s]</summary>
    public Duration OpensWithin { get; }

    /// <summary>Its shortest operating time: it stays closed until the limit has lasted so long; null where it is not stated. [s]</summary>
    public Duration? OpensNotBefore { get; }

    /// <summary>The pause until it tries again; null where it stays open until it is reset. [s]</summary>
    public Duration? RetriesAfter { get; }

    /// <summary>Whether it stays open until it is reset.</summary>
    public bool IsLatched => RetriesAfter is null;

    /// <inheritdoc/>
    public override ElectricResistance MinimumResistance { get; }

    /// <inheritdoc/>
    public override ElectricResistance MaximumResistance => MinimumResistance;

    internal override double LeastOhms => _ohms;

    internal override double GreatestOhms => _ohms;

    internal override double MostAmperes => _mostAmperes;

    // A semiconductor blocks up to a voltage, however short it lasts.
    private protected override double CrestCounted => Math.Sqrt(2);

    internal override double PauseSeconds { get; }

    internal override double CurrentFactorAt(Temperature ambient, string parameter)
    {
        Require.Finite(Celsius.Of(ambient), parameter, "°C");
        return 1;
    }

    internal override double CarriedAmperes(double currentFactor) => _leastAmperes;

    internal override double MostCarriedAmperes(double currentFactor) => _mostAmperes;

    internal override double CertainAmperes(double currentFactor) => _mostAmperes;

    // It holds an inrush down to its limit and so draws it out: one that lasts longer than its time opens it. Where the shortest time is
    // stated, the charge of the inrush has to pass before it, at the least current that the limit holds.
    internal override Judgment JudgeInrush(double peakAmperes, double ampereSquaredSeconds, double currentFactor)
    {
        if (!Limits.IsAbove(peakAmperes, _leastAmperes)) return OfWithstand(peakAmperes / _leastAmperes);
        double seconds = ampereSquaredSeconds / peakAmperes / peakAmperes, shareOfTime = seconds / _openSeconds;
        if (_earliestSeconds > 0) return OfWithstand(seconds * (peakAmperes / _leastAmperes) / _earliestSeconds);
        return !Limits.IsBelow(peakAmperes, _mostAmperes) && Limits.IsAbove(shareOfTime, 1)
            ? OfWithstand(shareOfTime)
            : Judgment.Unknown($"the shortest operating time of {Name}");
    }

    internal override OpeningTimes OpeningAt(double amperes, double currentFactor)
    {
        if (!Limits.IsAbove(amperes, _leastAmperes)) return OpeningTimes.Never;
        return !Limits.IsBelow(amperes, _mostAmperes)
            ? new OpeningTimes(OperatingVerdict.Operates, _earliestSeconds, _openSeconds)
            : new OpeningTimes(OperatingVerdict.MayOperate, _earliestSeconds, double.PositiveInfinity);
    }

    internal override IEnumerable<double> StepsAt(double currentFactor) => [_mostAmperes];
}
