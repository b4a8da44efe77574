using System;
using System.Threading;
using CamPower.Studies;

namespace CamPower;

/// <summary>Where the supplies of a site may be set.</summary>
public static class SiteTrimming
{
    /// <summary>The interval of set point in which every device of a box is up and inside its accepted range, in every condition.</summary>
    /// <param name="site">The site. The other boxes keep their set points.</param>
    /// <param name="boxName">The name of the box or adapter.</param>
    /// <param name="cancellationToken">Breaks it off; a large site whose returns are shared takes long.</param>
    /// <returns>The window with the limit at each end named; it may be empty.</returns>
    /// <remarks>
    /// The whole site is solved at set points, and each end found by bisection to 1 nV. With one return a device more
    /// source voltage always means more voltage at every device, so what is inside the ends holds throughout. Where
    /// returns are shared that is no law: the range is walked in a hundred steps first, and a spot between two steps can
    /// be missed. A device that does not accept the supply's kind of current is left out: no set point helps it.
    /// Limits are sought up to 100 kV; one that says so is never met.
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The site has no box of that name.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    /// <example>
    /// <code>
    /// TrimWindow window = site.TrimWindowOf("yard box");
    /// Site trimmed = site.With(window.Box.SetTo(window.Middle));
    /// </code>
    /// </example>
    public static TrimWindow TrimWindowOf(this Site site, string boxName, CancellationToken cancellationToken = default)
    {
        DistributionBox box = Require.NotNull(site, nameof(site)).BoxNamed(Require.Name(boxName, nameof(boxName)), nameof(boxName));
        return new TrimSearch(site, box, cancellationToken).Window();
    }
}
