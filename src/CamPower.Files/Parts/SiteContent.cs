using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Writing;

namespace CamPower.Files.Parts;

/// <summary>What a site file holds: a site, and beside it the parts that others refer to by name.</summary>
internal sealed class SiteContent
{
    internal required Site Site { get; init; }

    internal IReadOnlyList<Cable> Cables { get; private init; } = [];

    internal IReadOnlyList<Device> Models { get; private init; } = [];

    internal IReadOnlyList<ProtectiveDevice> ProtectiveDevices { get; private init; } = [];

    internal IReadOnlyList<Cabinet> Cabinets { get; private init; } = [];

    internal IReadOnlyList<Outlet> Outlets { get; private init; } = [];

    /// <summary>What a file of a site holds, with a name for each part.</summary>
    /// <exception cref="System.ArgumentException">Two parts that differ have the same name.</exception>
    internal static SiteContent Of(Site site, PartNames names) => new()
    {
        Site = site,
        Cables = names.Add(CableFormats.Cables, site.Runs.SelectMany(r => r.Run.Segments).Select(s => s.Cable)),
        Models = names.Add(DeviceFormats.Models, site.Devices.Select(d => d.Model)),
        ProtectiveDevices = names.Add(ProtectionFormats.Devices,
            site.Boxes.SelectMany(b => b.Outputs).Select(o => o.Protection).OfType<ProtectiveDevice>()),
        Cabinets = names.Add(EnclosureFormats.Cabinets, site.Cabinets),
        Outlets = names.Add(BoxFormats.Outlets, site.Boxes.Select(b => b.Outlet).OfType<Outlet>()),
    };
}
