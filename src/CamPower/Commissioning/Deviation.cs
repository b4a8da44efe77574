namespace CamPower.Commissioning;

/// <summary>One fault put into the model: what, in which unit and at which place of it, and how large.</summary>
/// <remarks>The place is the index of a run, a device or an output of the feed; which, and what the size means, the cause decides: see
/// <see cref="FeedModel"/> and <see cref="BoxModel"/>.</remarks>
internal readonly struct Deviation(Cause cause, int unit, int place, double size)
{
    internal Cause Cause { get; } = cause;

    internal int Unit { get; } = unit;

    internal int Place { get; } = place;

    internal double Size { get; } = size;
}
