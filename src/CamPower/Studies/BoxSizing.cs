using System;
using System.Collections.Generic;
using CamPower.Studies;

namespace CamPower;

/// <summary>Which box a site needs.</summary>
public static class BoxSizing
{
    /// <summary>The smallest box of a catalog that can feed what a box of the site feeds.</summary>
    /// <param name="site">The site, its runs included: a device at the end of a long cable draws more.</param>
    /// <param name="boxName">The name of the box that is to be chosen.</param>
    /// <param name="catalog">The boxes to choose from, in any order. They may bear any names.</param>
    /// <param name="policy">The room that it must leave.</param>
    /// <returns>The choice, and of every box of the catalog why it will or will not do; none is an answer.</returns>
    /// <remarks>
    /// The site is solved with each supply in the place of the present one, set as that is where its trim range allows and
    /// as it is listed otherwise; a box that declares no enclosure is taken to stand in that of the present one. A box in an
    /// enclosure whose efficiency is not declared up to its load will not do: nobody knows how warm it gets inside. Outputs may be wired anew: the strongest gets the largest current. Whether the devices
    /// get enough voltage is not a matter of size: <see cref="SiteTrimming.TrimWindowOf"/> answers that.
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument, or a box of the catalog, is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name.</exception>
    /// <example>
    /// <code>
    /// BoxChoice choice = site.SmallestBoxFor("yard box", BoxCatalog.Generic, SizingPolicy.CommonPractice);
    /// foreach (BoxCandidate candidate in choice.Candidates) Console.WriteLine(candidate);
    /// </code>
    /// </example>
    public static BoxChoice SmallestBoxFor(this Site site, string boxName, IEnumerable<DistributionBox> catalog, SizingPolicy policy)
    {
        DistributionBox box = Require.NotNull(site, nameof(site)).BoxNamed(Require.Name(boxName, nameof(boxName)), nameof(boxName));
        return new BoxTrial(site, box, Require.NotNull(policy, nameof(policy))).Choose(Require.Items(catalog, nameof(catalog)));
    }

    /// <summary>The fewest boxes of a catalog that can feed what a box of the site feeds, and what goes to which.</summary>
    /// <param name="site">The site, its runs included.</param>
    /// <param name="boxName">The name of the box that is to be divided.</param>
    /// <param name="catalog">The boxes to choose from, each as often as wanted, in any order.</param>
    /// <param name="policy">The room that each must leave.</param>
    /// <returns>The boxes, a lower bound on their number with what sets it, and the site with them; none is an answer.</returns>
    /// <remarks>
    /// Each box must pass what <see cref="SmallestBoxFor"/> asks for. Outputs whose returns meet stay together. The bound is
    /// what the whole needs over what the best box of the catalog has, in outputs and in current; where no way of dividing
    /// the outputs among so many boxes is left untried and none will do, it rises by one. A search that would take too long
    /// ends with more boxes than the bound, and says so. The same input always gives the same boxes. Where the boxes hang,
    /// and whether the devices get enough voltage, is not asked: the runs stay as they are. Each box that brings no enclosure of its own
    /// is taken to hang in one like the present one, alone in it also where the present one stands in a cabinet beside others; one that
    /// declares no receptacle is plugged into that of the present one. What somebody tied stays tied: an end at an output that feeds
    /// nothing goes to a free one of the same box as the other end, and the tie falls away where there is none.
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument, or a box of the catalog, is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name.</exception>
    /// <example>
    /// <code>
    /// BoxSplit split = site.SplitFor("yard box", BoxCatalog.Generic, SizingPolicy.CommonPractice);
    /// Console.WriteLine($"{split.Boxes.Count} boxes, proven least: {split.IsProvenLeast}");
    /// SiteAssessment divided = split.Site.Assess();
    /// </code>
    /// </example>
    public static BoxSplit SplitFor(this Site site, string boxName, IEnumerable<DistributionBox> catalog, SizingPolicy policy)
    {
        DistributionBox box = Require.NotNull(site, nameof(site)).BoxNamed(Require.Name(boxName, nameof(boxName)), nameof(boxName));
        return new BoxSplitSearch(site, box, Require.NotNull(policy, nameof(policy)), Require.Items(catalog, nameof(catalog))).Split();
    }
}
