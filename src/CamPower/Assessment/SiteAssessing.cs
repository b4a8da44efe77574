using System;
using CamPower.Assessment;

namespace CamPower;

/// <summary>Solves a site.</summary>
public static class SiteAssessing
{
    /// <summary>The site solved in every one of its conditions.</summary>
    /// <param name="site">The site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="site"/> is null.</exception>
    /// <example>
    /// <code>
    /// SiteAssessment assessment = site.Assess();
    /// foreach (DeviceAssessment device in assessment.Devices) Console.WriteLine(device.Worst);
    /// </code>
    /// </example>
    public static SiteAssessment Assess(this Site site) => SiteSolver.Solve(Require.NotNull(site, nameof(site)));
}
