using System.Collections.Generic;
using System.Linq;
using Microsoft.Net.Http.Headers;

namespace PlanService;

/// <summary>Which of the forms of an answer a client asks for, by RFC 9110, 12.5.1.</summary>
internal static class Accepted
{
    /// <summary>The form that is wanted most, the first of those that are wanted alike; null where none is acceptable.</summary>
    /// <param name="forms">The forms that there are.</param>
    /// <param name="ranges">What the Accept header says. Without any, everything is acceptable.</param>
    public static MediaTypeHeaderValue? BestOf(IEnumerable<MediaTypeHeaderValue> forms, IList<MediaTypeHeaderValue> ranges) =>
        forms.Where(form => QualityOf(form, ranges) > 0).MaxBy(form => QualityOf(form, ranges));

    // The narrowest range that takes in the form decides, wherever it stands in the header.
    private static double QualityOf(MediaTypeHeaderValue form, IList<MediaTypeHeaderValue> ranges) =>
        ranges.Count == 0 ? 1 : ranges.Where(form.IsSubsetOf).MaxBy(NarrownessOf) is { } range ? range.Quality ?? 1 : 0;

    private static int NarrownessOf(MediaTypeHeaderValue range) => range switch
    {
        { MatchesAllTypes: true } => 0,
        { MatchesAllSubTypes: true } => 1,
        _ => 2 + range.Parameters.Count(p => !p.Name.Equals("q", System.StringComparison.OrdinalIgnoreCase)),
    };
}
