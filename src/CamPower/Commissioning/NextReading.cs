using System;

namespace CamPower.Commissioning;

/// <summary>The reading that is expected to tell most for its cost.</summary>
/// <remarks>Immutable. What each remaining group predicts for it is <see cref="CauseGroup.Predict"/>.</remarks>
public sealed class NextReading
{
    internal NextReading(ExpectedReading expected, double bits, double cost)
    {
        Point = expected.Point;
        ExpectedBits = bits;
        Cost = cost;
        Step = expected.Step;
        Safety = expected.Safety;
    }

    /// <summary>What to read, where and in which state.</summary>
    public ReadingPoint Point { get; }

    /// <summary>How much it is expected to tell. [bit]</summary>
    public double ExpectedBits { get; }

    /// <summary>What it costs, over a reading at the open box. [1]</summary>
    /// <remarks>Common practice, no source: the way to the device and the ladder count most.</remarks>
    public double Cost { get; }

    /// <summary>What to do first, and where the leads go.</summary>
    public string Step { get; }

    /// <summary>What keeps it safe.</summary>
    public string Safety { get; }

    /// <summary>Point, information and cost, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Point} ({ExpectedBits:0.00} bit, cost {Cost:0.#})");
}
