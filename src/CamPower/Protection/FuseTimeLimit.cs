using System;
using UnitsNet;

namespace CamPower;

/// <summary>One time limit of a fuse: at a multiple of its rated current it opens not before one time and not after another.</summary>
/// <remarks>Immutable. a time limit bounds the time from at least one side.</remarks>
/// <example>
/// <code>
/// var limit = new FuseTimeLimit(2.75, Duration.FromMilliseconds(50), Duration.FromSeconds(2), Sources.Iec60127QuickActing);
/// </code>
/// </example>
public sealed class FuseTimeLimit
{
    private const double LargestMultiple = 1000;

    /// <summary>States a time limit.</summary>
    /// <param name="multiple">Current over rated current, above 1, at most 1000. [1]</param>
    /// <param name="notBefore">The fuse carries the current at least so long, above 0; null where nothing is said. [s]</param>
    /// <param name="notAfter">The fuse has opened by then, above <paramref name="notBefore"/>; null where nothing is said. [s]</param>
    /// <param name="source">Where the time limit comes from.</param>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    /// <exception cref="ArgumentException">Neither time is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public FuseTimeLimit(double multiple, Duration? notBefore, Duration? notAfter, Citation source)
    {
        Multiple = multiple > 1 && multiple <= LargestMultiple
            ? multiple
            : throw Require.OutOfRange(multiple, nameof(multiple), "", "above 1, at most 1000");
        if (notBefore is null && notAfter is null) throw new ArgumentException("a time limit needs a time.", nameof(notBefore));
        NotBeforeSeconds = notBefore is Duration least ? Require.Positive(least.Seconds, nameof(notBefore), "s") : 0;
        NotAfterSeconds = notAfter is Duration most ? Require.Positive(most.Seconds, nameof(notAfter), "s") : double.PositiveInfinity;
        if (NotAfterSeconds <= NotBeforeSeconds)
        {
            throw Require.OutOfRange(NotAfterSeconds, nameof(notAfter), "s", FormattableString.Invariant($"above {NotBeforeSeconds}"));
        }

        NotBefore = notBefore;
        NotAfter = notAfter;
        Source = Require.NotNull(source, nameof(source));
    }

    /// <summary>Current over rated current. [1]</summary>
    public double Multiple { get; }

    /// <summary>The fuse carries the current at least so long; null where nothing is said. [s]</summary>
    public Duration? NotBefore { get; }

    /// <summary>The fuse has opened by then; null where nothing is said. [s]</summary>
    public Duration? NotAfter { get; }

    /// <summary>Where the time limit comes from.</summary>
    public Citation Source { get; }

    internal double NotBeforeSeconds { get; }

    internal double NotAfterSeconds { get; }

    /// <summary>The time limit in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Multiple:G6} × rated: not before {Text(NotBefore)}, not after {Text(NotAfter)}");

    private static string Text(Duration? time) =>
        time is Duration given ? FormattableString.Invariant($"{given.Seconds:G6} s") : "(not said)";
}
