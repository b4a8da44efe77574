namespace CamPower.Assessment;

/// <summary>Voltages that feed circuits: at the terminals of each box, and which end of the protective devices' resistance
/// counts.</summary>
/// <remarks>Immutable, but for <see cref="Move"/>. Of a box that nothing else is said of it is the end of its supply's
/// tolerance.</remarks>
internal sealed class RailVolts
{
    private readonly RailVolts? _others;
    private readonly DistributionBox? _box;
    private double _volts;

    private RailVolts(bool isHighest, RailVolts? others = null, DistributionBox? box = null, double volts = 0)
    {
        IsHighest = isHighest;
        _others = others;
        _box = box;
        _volts = volts;
    }

    /// <summary>The lowest voltage and the greatest resistance: where devices go dark.</summary>
    internal static RailVolts Lowest { get; } = new(isHighest: false);

    /// <summary>The highest voltage and the least resistance: where they see too much.</summary>
    internal static RailVolts Highest { get; } = new(isHighest: true);

    /// <summary>Whether the least resistance counts, not the greatest.</summary>
    internal bool IsHighest { get; }

    /// <summary>The voltage at the terminals of a box. [V]</summary>
    internal double Of(DistributionBox box)
    {
        for (RailVolts? rail = this; rail is not null; rail = rail._others)
        {
            if (ReferenceEquals(rail._box, box)) return rail._volts;
        }

        return IsHighest ? box.HighestVolts : box.Supply.Output.LowestVolts;
    }

    /// <summary>The voltage of the box that it was last given one of. [V]</summary>
    internal double OwnVolts => _volts;

    /// <summary>Gives that box another voltage: of one that is not shared. [V]</summary>
    internal void Move(double volts) => _volts = volts;

    /// <summary>The same with another voltage at the terminals of one box. [V]</summary>
    internal RailVolts With(DistributionBox box, double volts) => new(IsHighest, this, box, volts);
}
