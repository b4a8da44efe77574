using System.Collections.Generic;

namespace CamPower;

/// <summary>A site solved in every condition.</summary>
/// <remarks>
/// Immutable. Devices are fed from the lowest voltage of their supply, which is where they go dark; currents are
/// the larger of those at the lowest and at the highest voltage. A transformer whose plate or whose devices' input stages are stated is
/// solved as alternating current, all its devices together: <see cref="DeviceInCondition.Ac"/>; another one with RMS magnitudes at unity
/// power factor.
/// </remarks>
public sealed class SiteAssessment
{
    internal SiteAssessment(Site site, IReadOnlyList<DeviceAssessment> devices, IReadOnlyList<BoxAssessment> boxes,
        IReadOnlyList<ShieldAssessment> shields)
    {
        Site = site;
        Devices = devices;
        Boxes = boxes;
        Shields = shields;
    }

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>Its devices, in the site's order.</summary>
    public IReadOnlyList<DeviceAssessment> Devices { get; }

    /// <summary>Its boxes and adapters, in the site's order, each with its used outputs.</summary>
    public IReadOnlyList<BoxAssessment> Boxes { get; }

    /// <summary>Its video shields, where they carry return current.</summary>
    public IReadOnlyList<ShieldAssessment> Shields { get; }

    /// <summary>The name of the site; never throws.</summary>
    public override string ToString() => Site.Name;
}
