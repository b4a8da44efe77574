namespace CamPower.Commissioning;

/// <summary>One uncertain number of a feed, moved by its standard deviation.</summary>
internal sealed class Direction(FeedNumbers numbers, double supplyVolts = 0, int? common = null, bool isDraw = false)
{
    /// <summary>The numbers of the feed with it moved.</summary>
    internal FeedNumbers Numbers { get; } = numbers;

    /// <summary>By how much the supply moves. [V]</summary>
    internal double SupplyVolts { get; } = supplyVolts;

    /// <summary>Its place among what is common, or null where it is the feed's own.</summary>
    internal int? Common { get; } = common;

    /// <summary>Whether it is what a device draws.</summary>
    internal bool IsDraw { get; } = isDraw;
}
