using System;
using System.Threading;
using CamPower.Assessment;

namespace CamPower;

/// <summary>Solves a site.</summary>
public static class SiteAssessing
{
    /// <summary>The site solved in every one of its conditions.</summary>
    /// <param name="site">The site.</param>
    /// <param name="cancellationToken">Breaks it off; a large site whose returns are shared takes long.</param>
    /// <exception cref="ArgumentNullException"><paramref name="site"/> is null.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    /// <example>
    /// <code>
    /// SiteAssessment assessment = site.Assess();
    /// foreach (DeviceAssessment device in assessment.Devices) Console.WriteLine(device.Worst);
    /// </code>
    /// </example>
    public static SiteAssessment Assess(this Site site, CancellationToken cancellationToken = default) =>
        SiteSolver.Solve(Require.NotNull(site, nameof(site)), cancellationToken);
}
