using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>When a protective device opens, or trips: not before one time, not after another.</summary>
/// <remarks>
/// Standards and data sheets bound the time from both sides; where they give no bound, there is none here. Holds seconds,
/// infinite where there is no bound. The default value is no result: its verdict is <see cref="OperatingVerdict.None"/>.
/// </remarks>
/// <example>
/// <code>
/// OpeningTimes opening = fuse.OpeningAt(ElectricCurrent.FromAmperes(9), Temperature.FromDegreesCelsius(25));
/// Console.WriteLine(opening);   // opens within 237 ms
/// </code>
/// </example>
public readonly struct OpeningTimes : IEquatable<OpeningTimes>
{
    internal OpeningTimes(OperatingVerdict verdict, double earliestSeconds, double latestSeconds)
    {
        Verdict = verdict;
        EarliestSeconds = earliestSeconds;
        LatestSeconds = latestSeconds;
    }

    /// <summary>Whether the device interrupts the current.</summary>
    public OperatingVerdict Verdict { get; }

    /// <summary>It does not open before this; zero where nothing bounds it, null where it never opens. [s]</summary>
    public Duration? Earliest => Seconds(EarliestSeconds);

    /// <summary>It has opened by then; null where nothing bounds the time, whatever the verdict. [s]</summary>
    public Duration? Latest => Seconds(LatestSeconds);

    internal static OpeningTimes Never { get; } = new(OperatingVerdict.DoesNotOperate, double.PositiveInfinity, double.PositiveInfinity);

    internal double EarliestSeconds { get; }

    internal double LatestSeconds { get; }

    /// <inheritdoc/>
    public bool Equals(OpeningTimes other) => Verdict == other.Verdict && EarliestSeconds.Equals(other.EarliestSeconds)
        && LatestSeconds.Equals(other.LatestSeconds);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is OpeningTimes other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (((int)Verdict * 31) + EarliestSeconds.GetHashCode()) * 31 + LatestSeconds.GetHashCode();

    /// <summary>Verdict and times in the invariant culture; never throws.</summary>
    public override string ToString() => Verdict switch
    {
        OperatingVerdict.DoesNotOperate => "does not open",
        OperatingVerdict.MayOperate => "may open" + Bounds,
        OperatingVerdict.Operates => "opens" + Bounds,
        _ => "no result",
    };

    /// <summary>Whether both are the same.</summary>
    public static bool operator ==(OpeningTimes left, OpeningTimes right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    public static bool operator !=(OpeningTimes left, OpeningTimes right) => !left.Equals(right);

    /// <summary>The result where this or another may be the case: the widest times, and a verdict only where both agree.</summary>
    internal OpeningTimes Or(OpeningTimes other) => new(Verdict == other.Verdict ? Verdict : OperatingVerdict.MayOperate,
        Math.Min(EarliestSeconds, other.EarliestSeconds), Math.Max(LatestSeconds, other.LatestSeconds));

    /// <summary>What holds when either of two alone opens it: the surer verdict and the sooner times.</summary>
    internal static OpeningTimes EitherOf(OpeningTimes one, OpeningTimes other) => new(
        one.Verdict > other.Verdict ? one.Verdict : other.Verdict,
        Math.Min(one.EarliestSeconds, other.EarliestSeconds), Math.Min(one.LatestSeconds, other.LatestSeconds));

    // The latest time is infinite where none is stated.
    private string Bounds => (EarliestSeconds > 0, double.IsInfinity(LatestSeconds)) switch
    {
        (false, true) => string.Empty,
        (true, true) => $", not before {Text(EarliestSeconds)}",
        (false, false) => $" within {Text(LatestSeconds)}",
        _ => $" within {Text(LatestSeconds)} ({Text(EarliestSeconds)} at the earliest)",
    };

    /// <summary>A time in the unit that a person says it in, to three digits: 69 ms, 5.28 s, 23.8 min, 1 h.</summary>
    internal static string Text(double seconds) => seconds switch
    {
        < 1 => FormattableString.Invariant($"{seconds * 1000:G3} ms"),
        < 120 => FormattableString.Invariant($"{seconds:G3} s"),
        < 3600 => FormattableString.Invariant($"{seconds / 60:G3} min"),
        _ => FormattableString.Invariant($"{seconds / 3600:G3} h"),
    };

    private static Duration? Seconds(double seconds) => double.IsInfinity(seconds) ? null : Duration.FromSeconds(seconds);
}
