using System.Collections.Generic;
using System.Collections.ObjectModel;

namespace CamPower;

/// <summary>Cables that the same reading cannot tell apart.</summary>
/// <remarks>Immutable. The first is the nearest to the reading; the others lie within the tolerance of it.</remarks>
/// <example><code>foreach (CableCandidate candidate in identification.Groups[0].Candidates) Console.WriteLine(candidate);</code></example>
public sealed class CableCandidateGroup
{
    internal CableCandidateGroup(ReadOnlyCollection<CableCandidate> candidates, bool fits)
    {
        Candidates = candidates;
        Fits = fits;
    }

    /// <summary>The cables, nearest to the reading first; at least one.</summary>
    public IReadOnlyList<CableCandidate> Candidates { get; }

    /// <summary>Whether the reading lies within the tolerance of the nearest of them.</summary>
    public bool Fits { get; }

    /// <summary>The candidates in a row; never throws.</summary>
    public override string ToString() => string.Join(" or ", Candidates);
}
