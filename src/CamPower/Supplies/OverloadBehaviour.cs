using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>What a supply does when more than its limit is drawn: nothing, hold the current, fold it back, pulse or shut down.</summary>
/// <remarks>
/// Immutable. It acts as soon as the current that the resistances alone would let flow exceeds the limit. What its output
/// capacitors discharge into a fault in the first milliseconds is not in it.
/// </remarks>
/// <example>
/// <code>
/// OverloadBehaviour adapter = OverloadBehaviour.ConstantCurrent(ElectricCurrent.FromAmperes(2.2));
/// OverloadBehaviour box = OverloadBehaviour.Hiccup(ElectricCurrent.FromAmperes(14), pulse: Duration.FromMilliseconds(100),
///     period: Duration.FromSeconds(1));   // 4.43 A RMS
/// </code>
/// </example>
public sealed class OverloadBehaviour
{
    private readonly double _shortAmperes, _pulseSeconds, _periodSeconds, _duty;
    private readonly string _words;

    private OverloadBehaviour(string words, double limitAmperes, double shortAmperes, double pulseSeconds, double periodSeconds)
    {
        _words = words;
        LimitAmperes = limitAmperes;
        _shortAmperes = shortAmperes;
        _pulseSeconds = pulseSeconds;
        _periodSeconds = periodSeconds;
        _duty = double.IsInfinity(pulseSeconds) ? 1 : pulseSeconds / periodSeconds;
    }

    /// <summary>No limit at all: a battery, or a transformer without protection.</summary>
    public static OverloadBehaviour Unlimited { get; } = Steady("no limit", double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>The current at which it acts; null where it never does. [A]</summary>
    public ElectricCurrent? Limit => double.IsInfinity(LimitAmperes) ? null : ElectricCurrent.FromAmperes(LimitAmperes);

    internal double LimitAmperes { get; }

    /// <summary>The supply holds its current at the limit, whatever the resistance, as long as the fault lasts.</summary>
    /// <param name="limit">The current, above 0. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is not above 0, or not finite.</exception>
    public static OverloadBehaviour ConstantCurrent(ElectricCurrent limit)
    {
        double amperes = Positive(limit, nameof(limit));
        return Steady(FormattableString.Invariant($"holds {amperes:G6} A"), amperes, amperes);
    }

    /// <summary>The supply lowers its current with its voltage, along a straight line from the limit to a smaller current into a short.</summary>
    /// <param name="limit">The current at which it begins, above 0. [A]</param>
    /// <param name="shortCircuit">The current into a short at its terminals, above 0, at most <paramref name="limit"/>. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException">A current is outside its range.</exception>
    public static OverloadBehaviour Foldback(ElectricCurrent limit, ElectricCurrent shortCircuit)
    {
        double amperes = Positive(limit, nameof(limit)), atShort = Positive(shortCircuit, nameof(shortCircuit));
        if (atShort > amperes) throw Require.OutOfRange(atShort, nameof(shortCircuit), "A", FormattableString.Invariant($"above 0, at most {amperes}"));
        return Steady(FormattableString.Invariant($"folds back from {amperes:G6} A to {atShort:G6} A"), amperes, atShort);
    }

    /// <summary>The supply tries again and again: pulses at the limit, with pauses. It heats by the RMS current.</summary>
    /// <param name="limit">The current of a pulse, above 0. [A]</param>
    /// <param name="pulse">How long a pulse lasts, above 0. [s]</param>
    /// <param name="period">From one pulse to the next, above <paramref name="pulse"/>. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static OverloadBehaviour Hiccup(ElectricCurrent limit, Duration pulse, Duration period)
    {
        double amperes = Positive(limit, nameof(limit));
        double on = Require.Positive(pulse.Seconds, nameof(pulse), "s"), cycle = Require.Positive(period.Seconds, nameof(period), "s");
        if (cycle <= on) throw Require.OutOfRange(cycle, nameof(period), "s", FormattableString.Invariant($"above {on}"));
        return new(FormattableString.Invariant($"pulses of {amperes:G6} A for {on:G6} s every {cycle:G6} s"), amperes, amperes, on, cycle);
    }

    /// <summary>The supply shuts down and stays off until somebody restarts it.</summary>
    /// <param name="limit">The largest current until then, above 0. [A]</param>
    /// <param name="within">The longest time until then, above 0. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static OverloadBehaviour Shutdown(ElectricCurrent limit, Duration within)
    {
        double amperes = Positive(limit, nameof(limit)), on = Require.Positive(within.Seconds, nameof(within), "s");
        return new(FormattableString.Invariant($"shuts down above {amperes:G6} A within {on:G6} s"), amperes, amperes, on, double.PositiveInfinity);
    }

    /// <summary>The behaviour in words, in the invariant culture; never throws.</summary>
    public override string ToString() => _words;

    /// <summary>What flows where the resistances alone would let a current flow.</summary>
    internal LimitedCurrent Limited(double prospectiveAmperes)
    {
        if (prospectiveAmperes <= LimitAmperes) return LimitedCurrent.Steady(prospectiveAmperes);

        // The line I = Is + (Il − Is)·V/Vs meets V = I·R, with R = Vs/Ip; level where nothing folds back.
        double amperes = _shortAmperes / (1 - ((LimitAmperes - _shortAmperes) / prospectiveAmperes));
        return new LimitedCurrent(amperes, amperes * Math.Sqrt(_duty), _pulseSeconds, _periodSeconds);
    }

    private static OverloadBehaviour Steady(string words, double limitAmperes, double shortAmperes) =>
        new(words, limitAmperes, shortAmperes, double.PositiveInfinity, double.PositiveInfinity);

    private static double Positive(ElectricCurrent current, string parameter) => Require.Positive(current.Amperes, parameter, "A");
}
