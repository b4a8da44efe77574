using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>An uninterruptible supply before the boxes of a receptacle: its limits, and how long it runs at each load.</summary>
/// <remarks>Immutable. What else is plugged into it does not count. Its battery is live when everything else is off: leave work on it to
/// those whom the local code allows to do it.</remarks>
/// <example>
/// <code>
/// var standby = new UninterruptibleSupply("desk unit", ElectricApparentPower.FromVoltamperes(600), Power.FromWatts(360),
///     [new RuntimePoint(Power.FromWatts(100), Duration.FromMinutes(25)), new RuntimePoint(Power.FromWatts(360), Duration.FromMinutes(4))],
///     crestFactor: 3, backupTime: Duration.FromMinutes(15));
/// </code>
/// </example>
public sealed class UninterruptibleSupply
{
    /// <summary>Describes an uninterruptible supply.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="apparentPower">The apparent power that it is rated for, above 0. [VA]</param>
    /// <param name="power">The power that it is rated for, above 0. [W]</param>
    /// <param name="runtimes">How long it runs at each load, with a new battery: at least one, in rising load and falling time.</param>
    /// <param name="crestFactor">The largest peak over the RMS current that it gives at its rating, from 1 to 100; null where the data
    /// sheet does not say. [1]</param>
    /// <param name="backupTime">How long it must carry its boxes, above 0; null where no time is wanted. [s]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, there is no runtime, or they are not in rising load and
    /// falling time.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public UninterruptibleSupply(string name, ElectricApparentPower apparentPower, Power power, IEnumerable<RuntimePoint> runtimes,
        double? crestFactor = null, Duration? backupTime = null)
    {
        Name = Require.Name(name, nameof(name));
        Voltamperes = Require.Positive(apparentPower.Voltamperes, nameof(apparentPower), "VA");
        Watts = Require.Positive((double)power.Watts, nameof(power), "W");
        Runtimes = Require.Items(runtimes, nameof(runtimes));
        if (Runtimes.Count == 0) throw new ArgumentException("There must be at least one runtime.", nameof(runtimes));
        if (Runtimes.Zip(Runtimes.Skip(1), (one, next) => next.Watts > one.Watts && next.Seconds < one.Seconds).Any(rises => !rises))
        {
            throw new ArgumentException("The runtimes must be in rising load and falling time.", nameof(runtimes));
        }

        if (crestFactor is double crest) Require.Within(crest, 1, 100, nameof(crestFactor), string.Empty);
        if (backupTime is Duration time) Require.Positive(time.Seconds, nameof(backupTime), "s");
        ApparentPower = apparentPower;
        Power = power;
        CrestFactor = crestFactor;
        BackupTime = backupTime;
    }

    /// <summary>Name on the site.</summary>
    public string Name { get; }

    /// <summary>The apparent power that it is rated for. [VA]</summary>
    public ElectricApparentPower ApparentPower { get; }

    /// <summary>The power that it is rated for. [W]</summary>
    public Power Power { get; }

    /// <summary>How long it runs at each load, with a new battery, in rising load.</summary>
    public IReadOnlyList<RuntimePoint> Runtimes { get; }

    /// <summary>The largest peak over the RMS current that it gives at its rating; null where the data sheet does not say. [1]</summary>
    public double? CrestFactor { get; }

    /// <summary>How long it must carry its boxes; null where no time is wanted. [s]</summary>
    public Duration? BackupTime { get; }

    internal double Voltamperes { get; }

    internal double Watts { get; }

    /// <summary>How long it runs at a load at least: as long as at the next larger one that is stated; 0 above the last. [s]</summary>
    internal double LeastSecondsAt(double watts) => Runtimes.FirstOrDefault(p => !Limits.IsAbove(watts, p.Watts))?.Seconds ?? 0;

    /// <summary>How long it runs at a load at most: the runtime curve is convex, and lies below the line between two points. Infinite below
    /// the first point, 0 above the last. [s]</summary>
    internal double MostSecondsAt(double watts)
    {
        for (int i = 0; i < Runtimes.Count; i++)
        {
            RuntimePoint point = Runtimes[i];
            if (Limits.IsAbove(watts, point.Watts)) continue;
            if (!Limits.IsBelow(watts, point.Watts)) return point.Seconds;
            if (i == 0) return double.PositiveInfinity;
            RuntimePoint before = Runtimes[i - 1];
            return before.Seconds + ((point.Seconds - before.Seconds) * (watts - before.Watts) / (point.Watts - before.Watts));
        }

        return 0;
    }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
