using System.Collections.Generic;
using System.Linq;

namespace CamPower;

/// <summary>The smallest box of a catalog that will do, and why each smaller one will not.</summary>
/// <remarks>Immutable. That none will do is an answer: <see cref="Chosen"/> is then null.</remarks>
public sealed class BoxChoice
{
    internal BoxChoice(IReadOnlyList<BoxCandidate> candidates)
    {
        Candidates = candidates;
        int chosen = candidates.TakeWhile(c => !c.Fits).Count();
        Chosen = chosen < candidates.Count ? candidates[chosen].Box : null;
        Binding = chosen > 0 ? candidates[chosen - 1].Shortfalls : [];
    }

    /// <summary>The smallest that will do, or null.</summary>
    public DistributionBox? Chosen { get; }

    /// <summary>Reasons against the next smaller box, or against the largest where none is enough; empty where the smallest is
    /// enough.</summary>
    public IReadOnlyList<BoxShortfall> Binding { get; }

    /// <summary>The whole catalog, smallest first: by rated current, then by number of outputs, then as listed.</summary>
    public IReadOnlyList<BoxCandidate> Candidates { get; }

    /// <summary>The choice and what binds it; never throws.</summary>
    public override string ToString()
    {
        string reasons = string.Join("; ", Binding);
        if (Chosen is null) return reasons.Length == 0 ? "none: there is none to choose from" : $"none, the largest: {reasons}";
        return reasons.Length == 0 ? $"{Chosen}" : $"{Chosen}, the next smaller: {reasons}";
    }
}
