using System.Linq;
using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Writing;

/// <summary>From a site to the entries of a file.</summary>
internal static class SiteWriting
{
    internal static SiteEntry Entry(Site site)
    {
        var cables = new NamedEntries<Cable, CableEntry>("cables", site.Runs.SelectMany(r => r.Run.Segments).Select(s => s.Cable),
            c => string.IsNullOrWhiteSpace(c.Name) ? null : c.Name, CableWriting.Entry);
        var models = new NamedEntries<Device, ModelEntry>("models", site.Devices.Select(d => d.Model), m => m.Name, (m, _) => ModelWriting.Entry(m));
        var devices = ProtectionWriting.Entries(site.Boxes);
        var cabinets = new NamedEntries<Cabinet, CabinetEntry>("cabinets", site.Cabinets, c => c.Name, (c, name) => new() { Name = name, Enclosure = EnclosureWriting.Entry(c.Enclosure) });
        var outlets = new NamedEntries<Outlet, OutletEntry>("outlets", site.Boxes.Select(b => b.Outlet).OfType<Outlet>(), o => o.Name, (o, _) => BoxWriting.Entry(o));
        return new SiteEntry
        {
            FormatVersion = SiteEntry.CurrentVersion,
            Name = site.Name,
            Altitude = site.Altitude is Length altitude ? new(altitude) : null,
            Cables = [.. cables.Entries],
            Models = [.. models.Entries],
            ProtectiveDevices = devices.Entries.Count == 0 ? null : [.. devices.Entries],
            Cabinets = cabinets.Entries.Count == 0 ? null : [.. cabinets.Entries],
            Conditions = [.. site.Conditions.Select(ConditionWriting.Entry)],
            Outlets = outlets.Entries.Count == 0 ? null : [.. outlets.Entries],
            Boxes = [.. site.Boxes.Select(box => BoxWriting.Entry(box, devices, cabinets, outlets))],
            Runs = [.. site.Runs.Select(run => RunWriting.Entry(run, cables))],
            Devices = [.. site.Devices.Select(d => new DeviceEntry { Name = d.Name, Model = models.NameOf(d.Model), At = d.At, LeadsReversed = d.LeadsReversed ? true : null })],
            VideoLinks = site.VideoLinks.Count == 0 ? null : [.. site.VideoLinks.Select(l => new VideoLinkEntry { Device = l.Device, Ground = l.Ground, ShieldResistance = new(l.ShieldResistance) })],
            Bonds = site.Bonds.Count == 0 ? null : [.. site.Bonds.Select(b => new BondEntry { Ground = b.Ground, Box = b.Box, Resistance = new(b.Resistance) })],
            Ties = site.Ties.Count == 0 ? null : [.. site.Ties.Select(Entry)],
        };
    }

    private static TieEntry Entry(OutputTie tie) => new()
    {
        One = new() { Box = tie.OneBox, Output = tie.OneOutput },
        Other = new() { Box = tie.OtherBox, Output = tie.OtherOutput },
    };
}
