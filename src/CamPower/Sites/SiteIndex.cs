using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Sites;

/// <summary>Where each name of the parts of a site leads: worked out once, when the site is made.</summary>
/// <remarks>Of several parts of one name the first is found: <see cref="SiteStructure"/> refuses the others.</remarks>
internal sealed class SiteIndex
{
    /// <summary>The place of what is not there.</summary>
    internal const int None = -1;

    private readonly Site _site;
    private readonly Dictionary<string, int> _boxes, _runs, _devices;
    private readonly HashSet<string> _grounds;
    private readonly ILookup<int, int> _runsBehind, _devicesBehind;
    private readonly ILookup<(string, int), int> _runsFrom;

    /// <param name="site">The site, its parts known already.</param>
    internal SiteIndex(Site site)
    {
        _site = site;
        _boxes = Places(site.Boxes.Select(b => b.Name));
        _runs = Places(site.Runs.Select(r => r.To));
        _devices = Places(site.Devices.Select(d => d.Name));
        _grounds = new HashSet<string>(site.VideoLinks.Select(l => l.Ground), StringComparer.Ordinal);
        _runsBehind = Enumerable.Range(0, site.Runs.Count)
            .ToLookup(i => site.Runs[i].From.JunctionName is string junction ? RunTo(junction) : None);
        _runsFrom = _runsBehind[None].Where(i => site.Runs[i].From.BoxName is not null)
            .ToLookup(i => (site.Runs[i].From.BoxName!, site.Runs[i].From.OutputNumber));
        _devicesBehind = Enumerable.Range(0, site.Devices.Count).ToLookup(i => RunTo(site.Devices[i].At));
    }

    /// <summary>The box of a name, or null.</summary>
    internal DistributionBox? Box(string name) => _boxes.TryGetValue(name, out int place) ? _site.Boxes[place] : null;

    /// <summary>The device of a name, or null.</summary>
    internal SiteDevice? Device(string name) => _devices.TryGetValue(name, out int place) ? _site.Devices[place] : null;

    /// <summary>Whether a shield ends at a ground of a name.</summary>
    internal bool HasGround(string name) => _grounds.Contains(name);

    /// <summary>The place of the run that ends at a junction, or <see cref="None"/>.</summary>
    internal int RunTo(string junction) => _runs.TryGetValue(junction, out int place) ? place : None;

    /// <summary>The runs that start at the output of a box.</summary>
    internal IEnumerable<int> RunsFrom(DistributionBox box, BoxOutput output) => _runsFrom[(box.Name, output.Number)];

    /// <summary>The runs that start where a run ends.</summary>
    internal IEnumerable<int> RunsBehind(int run) => _runsBehind[run];

    /// <summary>The devices where a run ends.</summary>
    internal IEnumerable<int> DevicesBehind(int run) => _devicesBehind[run];

    private static Dictionary<string, int> Places(IEnumerable<string> names)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        string[] all = [.. names];

        // The first of a name is its place.
        for (int place = all.Length - 1; place >= 0; place--) places[all[place]] = place;
        return places;
    }
}
