using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Mains;

/// <summary>Gathers the boxes of a site by the breakers of their receptacles.</summary>
internal static class BreakerStudy
{
    /// <summary>Every breaker that is stated, in the order of the boxes.</summary>
    internal static IReadOnlyList<BreakerAssessment> Of(SiteAssessment assessment) => Array.AsReadOnly(
        [.. ReceptacleStudy.Of(assessment).Where(r => r.Receptacle.Breaker is not null).GroupBy(r => r.Receptacle.Breaker!)
            .Select(together => new BreakerAssessment(together.Key, [.. together]))]);
}
