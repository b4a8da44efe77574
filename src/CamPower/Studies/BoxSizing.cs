using System;
using System.Collections.Generic;
using CamPower.Studies;

namespace CamPower;

/// <summary>Which box a site needs.</summary>
public static class BoxSizing
{
    /// <summary>The smallest box of a catalogue that can feed what a box of the site feeds.</summary>
    /// <param name="site">The site, its runs included: a device at the end of a long cable draws more.</param>
    /// <param name="boxName">The name of the box that is to be chosen.</param>
    /// <param name="catalogue">The boxes to choose from, in any order. They may bear any names.</param>
    /// <param name="policy">The room that it must leave.</param>
    /// <returns>The choice, and of every box of the catalogue why it will or will not do; none is an answer.</returns>
    /// <remarks>
    /// The site is solved with each supply in the place of the present one, set as that is where its trim range allows and
    /// as it is listed otherwise; a box that declares no enclosure is taken to stand in that of the present one. Outputs may be wired anew: the strongest gets the largest current. Whether the devices
    /// get enough voltage is not a matter of size: <see cref="SiteTrimming.TrimWindowOf"/> answers that.
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument, or a box of the catalogue, is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name.</exception>
    /// <example>
    /// <code>
    /// BoxChoice choice = site.SmallestBoxFor("yard box", BoxCatalogue.Generic, SizingPolicy.CommonPractice);
    /// foreach (BoxCandidate candidate in choice.Candidates) Console.WriteLine(candidate);
    /// </code>
    /// </example>
    public static BoxChoice SmallestBoxFor(this Site site, string boxName, IEnumerable<DistributionBox> catalogue, SizingPolicy policy)
    {
        DistributionBox box = Require.NotNull(site, nameof(site)).BoxNamed(Require.Name(boxName, nameof(boxName)), nameof(boxName));
        return new BoxTrial(site, box, Require.NotNull(policy, nameof(policy))).Choose(Require.Items(catalogue, nameof(catalogue)));
    }
}
