using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>Overload behavior of a supply above its limit: none, constant current, foldback, hiccup or shutdown.</summary>
/// <remarks>
/// Immutable. It acts as soon as the prospective current is above the limit. What its output capacitors discharge into a fault in the first
/// milliseconds is not in it.
/// </remarks>
/// <example>
/// <code>
/// OverloadBehavior adapter = OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(2.2));
/// OverloadBehavior box = OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(14), pulse: Duration.FromMilliseconds(100),
///     period: Duration.FromSeconds(1));   // 4.43 A RMS
/// </code>
/// </example>
public sealed class OverloadBehavior
{
    private readonly double _shortAmperes, _pulseSeconds, _periodSeconds, _duty;
    private readonly string _words;

    private OverloadBehavior(
        string words, ElectricCurrent? limit = null, ElectricCurrent? shortCircuit = null, Duration? pulse = null, Duration? period = null,
        Ratio tolerance = default)
    {
        _words = words;
        Tolerance = tolerance;
        LimitAmperes = limit?.Amperes ?? double.PositiveInfinity;
        _shortAmperes = shortCircuit?.Amperes ?? LimitAmperes;
        _pulseSeconds = pulse?.Seconds ?? double.PositiveInfinity;
        _periodSeconds = period?.Seconds ?? double.PositiveInfinity;
        _duty = pulse is null ? 1 : _pulseSeconds / _periodSeconds;
        Limit = limit;
        ShortCircuitCurrent = shortCircuit;
        Pulse = pulse;
        Period = period;
        double share = tolerance.DecimalFractions;
        Lowest = share > 0 ? Scaled(1 - share) : this;
        Highest = share > 0 ? Scaled(1 + share) : this;
    }

    /// <summary>No limit at all: a battery, or a transformer without protection.</summary>
    public static OverloadBehavior Unlimited { get; } = new("no limit");

    /// <summary>The current at which it acts; null where it never does. [A]</summary>
    public ElectricCurrent? Limit { get; }

    /// <summary>The current into a short at its terminals, where it folds back; null where it does not. [A]</summary>
    public ElectricCurrent? ShortCircuitCurrent { get; }

    /// <summary>How long current flows: a pulse of a hiccup, or the longest time until it has shut down; null where current flows on.
    /// [s]</summary>
    public Duration? Pulse { get; }

    /// <summary>From one pulse to the next; null where there is no next one. [s]</summary>
    public Duration? Period { get; }

    /// <summary>Tolerance of its currents. Loads are checked with the lowest value, faults with the highest. [1]</summary>
    public Ratio Tolerance { get; }

    /// <summary>The same with the least current that its tolerance leaves.</summary>
    internal OverloadBehavior Lowest { get; }

    /// <summary>The same with the most current that its tolerance leaves.</summary>
    internal OverloadBehavior Highest { get; }

    internal double LimitAmperes { get; }

    /// <summary>Whether it tries again and again.</summary>
    internal bool Pulses => !double.IsInfinity(_periodSeconds);

    /// <summary>Whether it stays off once it has been asked for too much.</summary>
    internal bool ShutsDown => !double.IsInfinity(_pulseSeconds) && double.IsInfinity(_periodSeconds);

    /// <summary>The current that a supply in overload gives at a share of its voltage: level, or along the line of foldback. [A]</summary>
    internal double AmperesAt(double shareOfVoltage) => _shortAmperes + ((LimitAmperes - _shortAmperes) * shareOfVoltage);

    /// <summary>The supply holds its current at the limit, whatever the resistance, as long as the fault lasts.</summary>
    /// <param name="limit">The current, above 0. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is not above 0, or not finite.</exception>
    public static OverloadBehavior ConstantCurrent(ElectricCurrent limit)
    {
        double amperes = Positive(limit, nameof(limit));
        return new(FormattableString.Invariant($"holds {amperes:G6} A"), limit);
    }

    /// <summary>The supply lowers its current with its voltage, along a straight line from the limit to a smaller current into a
    /// short.</summary>
    /// <param name="limit">The current at which it begins, above 0. [A]</param>
    /// <param name="shortCircuit">The current into a short at its terminals, above 0, at most <paramref name="limit"/>. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException">A current is outside its range.</exception>
    public static OverloadBehavior Foldback(ElectricCurrent limit, ElectricCurrent shortCircuit)
    {
        double amperes = Positive(limit, nameof(limit)), atShort = Positive(shortCircuit, nameof(shortCircuit));
        if (atShort > amperes)
        {
            throw Require.OutOfRange(atShort, nameof(shortCircuit), "A", FormattableString.Invariant($"above 0, at most {amperes}"));
        }

        return new(FormattableString.Invariant($"folds back from {amperes:G6} A to {atShort:G6} A"), limit, shortCircuit);
    }

    /// <summary>The supply tries again and again: pulses at the limit, with pauses. It heats by the RMS current.</summary>
    /// <param name="limit">The current of a pulse, above 0. [A]</param>
    /// <param name="pulse">How long a pulse lasts, above 0. [s]</param>
    /// <param name="period">From one pulse to the next, above <paramref name="pulse"/>. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static OverloadBehavior Hiccup(ElectricCurrent limit, Duration pulse, Duration period)
    {
        double amperes = Positive(limit, nameof(limit));
        double on = Require.Positive(pulse.Seconds, nameof(pulse), "s"), cycle = Require.Positive(period.Seconds, nameof(period), "s");
        if (cycle <= on) throw Require.OutOfRange(cycle, nameof(period), "s", FormattableString.Invariant($"above {on}"));
        return new(FormattableString.Invariant($"pulses of {amperes:G6} A for {on:G6} s every {cycle:G6} s"), limit, pulse: pulse,
            period: period);
    }

    /// <summary>The supply shuts down and stays off until it is restarted.</summary>
    /// <param name="limit">The largest current until then, above 0. [A]</param>
    /// <param name="within">The longest time until then, above 0. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static OverloadBehavior Shutdown(ElectricCurrent limit, Duration within)
    {
        double amperes = Positive(limit, nameof(limit)), on = Require.Positive(within.Seconds, nameof(within), "s");
        return new(FormattableString.Invariant($"shuts down above {amperes:G6} A within {on:G6} s"), limit, pulse: within);
    }

    /// <summary>The same behavior with a tolerance of its currents.</summary>
    /// <param name="tolerance">How far the limit, and a current into a short, may be off, from 0 to 0.9. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tolerance"/> is outside its range.</exception>
    /// <example>
    /// <code>
    /// OverloadBehavior held = OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(11)).WithTolerance(Ratio.FromPercent(10));
    /// </code>
    /// </example>
    public OverloadBehavior WithTolerance(Ratio tolerance)
    {
        Require.Within(tolerance.DecimalFractions, 0, 0.9, nameof(tolerance), "");
        return new(_words, Limit, ShortCircuitCurrent, Pulse, Period, tolerance);
    }

    /// <summary>The behavior in words, in the invariant culture; never throws.</summary>
    public override string ToString() =>
        Tolerance.DecimalFractions > 0 ? FormattableString.Invariant($"{_words} ± {Tolerance.Percent:G3} %") : _words;

    /// <summary>What flows where the resistances alone would let a current flow.</summary>
    internal LimitedCurrent Limited(double prospectiveAmperes)
    {
        if (prospectiveAmperes <= LimitAmperes) return LimitedCurrent.Steady(prospectiveAmperes);

        // The line I = Is + (Il − Is)·V/Vs meets V = I·R, with R = Vs/Ip; level where nothing folds back.
        return InOverload(_shortAmperes / (1 - ((LimitAmperes - _shortAmperes) / prospectiveAmperes)));
    }

    /// <summary>What flows into a fault that gets a current of an overloaded supply, as long as that gives any.</summary>
    internal LimitedCurrent InOverload(double amperes) => new(amperes, amperes * Math.Sqrt(_duty), _pulseSeconds, _periodSeconds);

    /// <summary>The same behavior of a supply whose currents are all larger or smaller by a factor.</summary>
    internal OverloadBehavior Times(double factor)
    {
        if (Limit is not ElectricCurrent limit) return this;
        OverloadBehavior same = (ShortCircuitCurrent, Pulse, Period) switch
        {
            (ElectricCurrent shortCircuit, _, _) => Foldback(limit * factor, shortCircuit * factor),
            (_, Duration pulse, Duration period) => Hiccup(limit * factor, pulse, period),
            (_, Duration within, _) => Shutdown(limit * factor, within),
            _ => ConstantCurrent(limit * factor),
        };
        return same.WithTolerance(Tolerance);
    }

    /// <summary>What two supplies on the same terminals do together: their limits add. The one that gives current all the time counts; null
    /// where it is not known of one.</summary>
    internal OverloadBehavior? With(OverloadBehavior? other)
    {
        if (other is null) return null;
        if (Limit is null || other.Limit is null) return Unlimited;
        OverloadBehavior goesOn = Pulse is not null && other.Pulse is null ? other : this;
        return goesOn.Times((Highest.LimitAmperes + other.Highest.LimitAmperes) / goesOn.Highest.LimitAmperes);
    }

    private OverloadBehavior Scaled(double share) => new(_words, Limit * share, ShortCircuitCurrent * share, Pulse, Period);

    private static double Positive(ElectricCurrent current, string parameter) => Require.Positive(current.Amperes, parameter, "A");
}
