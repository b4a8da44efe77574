using System;
using UnitsNet;

namespace CamPower;

/// <summary>Lowest voltage accepted at the load: a voltage, a largest drop, or both.</summary>
/// <remarks>Immutable. Of both the stricter one holds; which one that is depends on the source voltage.</remarks>
/// <example>
/// <code>
/// var accepted = VoltageLimit.AtLeast(ElectricPotential.FromVolts(10.8)).And(VoltageLimit.DropAtMost(Ratio.FromPercent(5)));
/// </code>
/// </example>
public sealed class VoltageLimit
{
    private const double NoDropLimit = 1;

    private VoltageLimit(double lowestVolts, double largestDrop)
    {
        LowestVolts = lowestVolts;
        LargestDropShare = largestDrop;
    }

    /// <summary>The lowest voltage accepted at the load, or null where only a drop is limited. [V]</summary>
    public ElectricPotential? LowestVoltage => LowestVolts > 0 ? ElectricPotential.FromVolts(LowestVolts) : null;

    /// <summary>The largest drop accepted, over the source voltage, or null where only a voltage is limited. [%]</summary>
    public Ratio? LargestDrop => LimitsDrop ? Ratio.FromPercent(LargestDropShare * 100) : null;

    /// <summary>The lowest accepted voltage, or 0 for none. [V]</summary>
    internal double LowestVolts { get; }

    /// <summary>The largest accepted drop over the source voltage, or 1 for none. [1]</summary>
    internal double LargestDropShare { get; }

    internal bool LimitsDrop => LargestDropShare < NoDropLimit;

    /// <summary>A lowest voltage at the load.</summary>
    /// <param name="lowest">From 1 nV to 1 MV. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lowest"/> is outside its range.</exception>
    public static VoltageLimit AtLeast(ElectricPotential lowest) => new(Require.SourceVolts(lowest.Volts, nameof(lowest)), NoDropLimit);

    /// <summary>A largest drop from the source to the load, as a share of the source voltage.</summary>
    /// <param name="drop">From 0 to 99.9 %. [%]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="drop"/> is outside its range.</exception>
    public static VoltageLimit DropAtMost(Ratio drop) => new(0, Require.Within(drop.Percent, 0, 99.9, nameof(drop), "%") / 100);

    /// <summary>Both limits together.</summary>
    /// <param name="other">The other limit.</param>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public VoltageLimit And(VoltageLimit other)
    {
        Require.NotNull(other, nameof(other));
        return new VoltageLimit(Math.Max(LowestVolts, other.LowestVolts), Math.Min(LargestDropShare, other.LargestDropShare));
    }

    /// <summary>The limits in words, in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        string voltage = LowestVolts > 0 ? FormattableString.Invariant($"at least {LowestVolts:G6} V") : string.Empty;
        string drop = LimitsDrop ? FormattableString.Invariant($"a drop of at most {LargestDropShare * 100:G6} %") : string.Empty;
        return voltage.Length > 0 && drop.Length > 0 ? voltage + " and " + drop : voltage + drop;
    }

    /// <summary>The lowest voltage accepted at a load that is fed from a source voltage. [V]</summary>
    internal double LowestVoltsFrom(double sourceVolts) => Math.Max(LowestVolts, VoltsAtLargestDrop(sourceVolts));

    /// <summary>Which of the two limits is the stricter one.</summary>
    internal BindingLimit StricterFrom(double sourceVolts) =>
        LowestVolts >= VoltsAtLargestDrop(sourceVolts) ? BindingLimit.LowestVoltage : BindingLimit.LargestDrop;

    internal bool IsMetBy(RunResult result) => result.HasOperatingPoint && result.SolvedVolts >= LowestVoltsFrom(result.SourceVolts);

    private double VoltsAtLargestDrop(double sourceVolts) => sourceVolts * (1 - LargestDropShare);
}
