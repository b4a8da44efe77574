using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower;

/// <summary>The fewest boxes of a catalog that feed what one box of a site feeds.</summary>
/// <remarks>
/// Immutable. That some output is too much for every box is an answer: there are then no boxes, and <see cref="Misfits"/>
/// names it. The number is proven least where it equals <see cref="LeastNumber"/>, below which there is a proof that no
/// choice will do. Among as few boxes, those of the least rated current together are taken that the search finds.
/// </remarks>
public sealed class BoxSplit
{
    internal BoxSplit(Site site, IReadOnlyList<BoxShare> boxes, IReadOnlyList<OutputAssessment> misfits, int leastNumber,
        BoxShortfall? binding)
    {
        Site = site;
        Boxes = boxes;
        Misfits = misfits;
        LeastNumber = leastNumber;
        Binding = binding;
    }

    /// <summary>The site with these boxes, its runs moved to them; the site as it was where there are none.</summary>
    public Site Site { get; }

    /// <summary>The boxes and what each takes over; empty where there are misfits, or where nothing is fed.</summary>
    public IReadOnlyList<BoxShare> Boxes { get; }

    /// <summary>The outputs that no box of the catalog can feed alone, nor in any company that was found.</summary>
    /// <remarks>Company helps only where it is too cold for a supply: what else the box feeds warms it.</remarks>
    public IReadOnlyList<OutputAssessment> Misfits { get; }

    /// <summary>A number of boxes below which none will do: a lower bound; 0 where there are no boxes.</summary>
    public int LeastNumber { get; }

    /// <summary>Whether fewer boxes of the catalog are proven not to do.</summary>
    public bool IsProvenLeast => Boxes.Count > 0 && Boxes.Count == LeastNumber;

    /// <summary>
    /// What one box fewer than <see cref="LeastNumber"/> lacks, were each the best of the catalog in that respect; null for
    /// one box, and where there would be enough of everything, but no way of dividing the outputs.
    /// </summary>
    public BoxShortfall? Binding { get; }

    /// <summary>The number, its proof and the boxes; never throws.</summary>
    public override string ToString()
    {
        if (Misfits.Count > 0) return $"none: too much for every box: {string.Join("; ", Misfits)}";
        string proof = IsProvenLeast ? "proven least" : FormattableString.Invariant($"at least {LeastNumber} are needed");
        string binding = Binding is null ? "" : $"; with one fewer: {Binding}";
        return FormattableString.Invariant($"{Boxes.Count}, {proof}{binding}: {string.Join(" + ", Boxes.Select(b => b.CatalogName))}");
    }

    internal static BoxSplit None(Site site, IReadOnlyList<OutputAssessment> misfits) => new(site, [], misfits, 0, null);
}
