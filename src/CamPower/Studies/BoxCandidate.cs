using System.Collections.Generic;

namespace CamPower;

/// <summary>A box of a catalog, and all that speaks against it.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxCandidate
{
    internal BoxCandidate(DistributionBox box, IReadOnlyList<BoxShortfall> shortfalls)
    {
        Box = box;
        Shortfalls = shortfalls;
    }

    /// <summary>The box, as the catalog has it.</summary>
    public DistributionBox Box { get; }

    /// <summary>Every reason why it will not do; empty where it will.</summary>
    public IReadOnlyList<BoxShortfall> Shortfalls { get; }

    /// <summary>Whether it will do.</summary>
    public bool Fits => Shortfalls.Count == 0;

    /// <summary>The box and its shortfalls; never throws.</summary>
    public override string ToString() => $"{Box}: {(Fits ? "will do" : string.Join("; ", Shortfalls))}";
}
