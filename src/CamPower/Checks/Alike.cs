using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>Things of a site that one rule finds for one cause: one finding, of the thing itself where there is one, of the site where there are more.</summary>
internal static class Alike
{
    /// <summary>The subject and the sentence, or none where nothing was found.</summary>
    /// <param name="site">The site.</param>
    /// <param name="things">The things that were found, in the order of the site.</param>
    /// <param name="plural">What they are called together.</param>
    /// <param name="one">What is said of one, after "It".</param>
    /// <param name="several">What is said of several, after their count and name.</param>
    internal static IEnumerable<(Subject About, string Message)> In(Site site, IEnumerable<Subject> things, string plural, string one, string several)
    {
        List<Subject> all = [.. things];
        if (all.Count == 1) yield return (all[0], $"It {one}.");
        if (all.Count > 1) yield return (new Subject(SubjectKind.Site, site.Name), FormattableString.Invariant($"{all.Count} {plural} {several}: {string.Join(", ", all)}."));
    }
}
