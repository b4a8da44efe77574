using System.Collections.Generic;
using System.Linq;

namespace CamPower;

/// <summary>Two versions of a site: what was added, removed and changed, and what that does to findings, margins and material.</summary>
/// <remarks>Immutable. Parts are known by their names; a run by its far end.</remarks>
/// <example>
/// <code>
/// SiteComparison comparison = after.ComparedWith(before, RuleSet.Standard, PriceList.Neutral);
/// foreach (Finding finding in comparison.Gained) Console.WriteLine(finding);
/// </code>
/// </example>
public sealed class SiteComparison
{
    internal SiteComparison(Site before, Site after, IReadOnlyList<string> added, IReadOnlyList<string> removed,
        IReadOnlyList<string> changed, IReadOnlyList<Finding> gained, IReadOnlyList<Finding> lost, IReadOnlyList<MovedMargin> margins,
        IReadOnlyList<MaterialLine> material)
    {
        Before = before;
        After = after;
        Added = added;
        Removed = removed;
        Changed = changed;
        Gained = gained;
        Lost = lost;
        Margins = margins;
        Material = material;
    }

    /// <summary>The site as it was.</summary>
    public Site Before { get; }

    /// <summary>The site as it is now.</summary>
    public Site After { get; }

    /// <summary>The parts that it has now alone, each in words.</summary>
    public IReadOnlyList<string> Added { get; }

    /// <summary>The parts that it had before alone, each in words.</summary>
    public IReadOnlyList<string> Removed { get; }

    /// <summary>The parts that are elsewhere or otherwise, each in words: what it was, and what it is now.</summary>
    public IReadOnlyList<string> Changed { get; }

    /// <summary>The findings that it has now alone, worst first. One whose severity has changed is gained and lost.</summary>
    public IReadOnlyList<Finding> Gained { get; }

    /// <summary>The findings that it had before alone, worst first.</summary>
    public IReadOnlyList<Finding> Lost { get; }

    /// <summary>The margins that moved, those that lost most first.</summary>
    public IReadOnlyList<MovedMargin> Margins { get; }

    /// <summary>The material that it needs more, or less where the quantity is negative.</summary>
    public IReadOnlyList<MaterialLine> Material { get; }

    /// <summary>What the material costs more, in the unit of the price list; negative where it costs less. Without work.</summary>
    public double Cost => Material.Sum(line => line.Cost);

    /// <summary>Whether nothing differs.</summary>
    public bool IsEmpty => Added.Count + Removed.Count + Changed.Count + Gained.Count + Lost.Count + Margins.Count + Material.Count == 0;

    /// <summary>How much differs; never throws.</summary>
    public override string ToString() => IsEmpty ? "no difference" : System.FormattableString.Invariant(
        $"{Added.Count} added, {Removed.Count} removed, {Changed.Count} changed; findings: {Gained.Count} new, {Lost.Count} gone");
}
