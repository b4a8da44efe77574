using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Studies;

/// <summary>Tries an adapter for each device that a box feeds.</summary>
internal sealed class AdapterTrial
{
    private readonly Site _site;
    private readonly DistributionBox _box;
    private readonly IReadOnlyList<Supply> _offered;
    private readonly CableRun _lead;
    private readonly SizingPolicy _policy;
    private readonly IReadOnlyList<OutputFeed> _feeds;
    private readonly HashSet<string> _devices;

    /// <summary>Prepares a trial with supplies of the right voltage, weakest first.</summary>
    internal AdapterTrial(Site site, DistributionBox box, IReadOnlyList<Supply> offered, CableRun lead, SizingPolicy policy)
    {
        _site = site;
        _box = box;
        _offered = offered;
        _lead = lead;
        _policy = policy;
        _feeds = [.. site.Feeds.SelectMany(g => g.Feeds).Where(f => ReferenceEquals(f.Box, box))];
        _devices = FedBy(site, box);
    }

    /// <summary>The names of the devices that a box feeds.</summary>
    internal static HashSet<string> FedBy(Site site, DistributionBox box) => new(
        site.Feeds.SelectMany(g => g.Feeds).Where(f => ReferenceEquals(f.Box, box)).SelectMany(f => f.DevicesFed)
            .Select(d => d.Name), StringComparer.Ordinal);

    internal SupplyLayout Layout()
    {
        // Each supply for all devices at once: adapters know nothing of each other.
        var enough = _offered.Select(supply => DevicesFedWellBy(With(_ => supply))).ToList();
        return new SupplyLayout(With(Smallest), _devices);

        Supply Smallest(string device)
        {
            int weakest = enough.FindIndex(devices => devices.Contains(device));
            return _offered[weakest >= 0 ? weakest : _offered.Count - 1];
        }
    }

    private HashSet<string> DevicesFedWellBy(Site site) => new(site.Assess().Boxes
        .Where(b => b.Outputs.Count > 0 && _policy.IsKeptBy(b.Worst))
        .SelectMany(b => b.Outputs).SelectMany(o => o.Devices).Select(d => d.Name), StringComparer.Ordinal);

    // The runs of the box go, and what is joined to it; each device gets an adapter and a place of its own.
    private Site With(Func<string, Supply> adapterOf)
    {
        var gone = new HashSet<SiteRun>(_feeds.SelectMany(f => f.Runs));
        SiteDevice[] moved = [.. _site.Devices.Where(d => _devices.Contains(d.Name))];
        Dictionary<string, string> places =
            Free(moved.Select(d => d.Name), "adapter of ", _site.Boxes.Select(b => b.Name).Concat(_site.Runs.Select(r => r.To)));
        return _site.With(
            boxes: _site.Boxes.Where(b => !ReferenceEquals(b, _box))
                .Concat(moved.Select(d => DistributionBox.Adapter(places[d.Name], adapterOf(d.Name)))),
            runs: _site.Runs.Where(r => !gone.Contains(r))
                .Concat(moved.Select(d => new SiteRun(RunOrigin.Output(places[d.Name], 1), places[d.Name], _lead))),
            devices: _site.Devices.Select(d => _devices.Contains(d.Name) ? d.MovedTo(places[d.Name]) : d),
            bonds: _site.Bonds.Where(b => !string.Equals(b.Box, _box.Name, StringComparison.Ordinal)),
            ties: _site.Ties.Where(t => !t.IsAt(_box.Name)));
    }

    // Names that nothing on the site bears yet.
    private static Dictionary<string, string> Free(IEnumerable<string> devices, string prefix, IEnumerable<string> taken)
    {
        var all = new HashSet<string>(taken, StringComparer.Ordinal);
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string device in devices)
        {
            string name = prefix + device;
            while (!all.Add(name)) name += " *";
            names.Add(device, name);
        }

        return names;
    }
}
