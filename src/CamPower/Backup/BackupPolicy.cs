using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>The room that a battery must leave: for its age, and a margin of capacity.</summary>
/// <remarks>Immutable. Temperature is not part of it: the conditions and the capacity curve of the battery cover that.</remarks>
/// <example><code>BackupPolicy careful = new(capacityLeft: Ratio.FromPercent(80), margin: Ratio.FromPercent(20));</code></example>
public sealed class BackupPolicy
{
    private readonly double _margin;

    /// <summary>States a policy.</summary>
    /// <param name="capacityLeft">Share of the capacity that is left at the end of the battery's life, above 0 and at most 1. [1]</param>
    /// <param name="margin">Capacity to be set aside, over what is needed, from 0 to 10. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public BackupPolicy(Ratio capacityLeft, Ratio margin)
    {
        double left = Require.Within(capacityLeft.DecimalFractions, 0, 1, nameof(capacityLeft), "");
        Require.Positive(left, nameof(capacityLeft), "");
        _margin = Require.Within(margin.DecimalFractions, 0, 10, nameof(margin), "");
        CapacityLeft = capacityLeft;
        Margin = margin;
    }

    /// <summary>80 % of the capacity left at the end of life (<see cref="Sources.Ieee485Aging"/>), and a margin of 20 %
    /// (<see cref="Sources.Nfpa72Margin"/>).</summary>
    public static BackupPolicy CommonPractice { get; } =
        new(Ratio.FromPercent(BatteryConstants.EndOfLife.Value), Ratio.FromPercent(BatteryConstants.Margin.Value));

    /// <summary>Share of its capacity that the battery has left at the end of its life. [1]</summary>
    public Ratio CapacityLeft { get; }

    /// <summary>Capacity to be set aside, over what is needed. [1]</summary>
    public Ratio Margin { get; }

    /// <summary>The shares in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{CapacityLeft.Percent:G6} % of the capacity left, margin {Margin.Percent:G6} %");

    internal Battery AtEndOfLife(Battery battery) => battery.Aged(CapacityLeft).WithCapacityShare(1 / (1 + _margin));
}
