using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Sites;

/// <summary>Outputs that must be solved together: most often one, more where their returns meet in a shared negative or in video
/// shields.</summary>
internal sealed class FeedGroup
{
    private readonly int[][] _places;

    private FeedGroup(IReadOnlyList<OutputFeed> feeds, IReadOnlyList<VideoLink> links, IReadOnlyList<GroundBond> bonds)
    {
        Feeds = feeds;
        Links = links;
        Bonds = bonds;
        Devices = [.. feeds.SelectMany(f => f.Devices)];
        Boxes = [.. feeds.Select(f => f.Box).Distinct()];
        _places = [.. Boxes.Select(box => Enumerable.Range(0, Devices.Count).Where(i => ReferenceEquals(Devices[i].Box, box)).ToArray())];
        SharesReturns = links.Count > 0 || feeds.Any(f => f.Runs.Any(r => r.ReturnAt is not null));
        HasMotor = feeds.Any(f => f.Motors > 0);
    }

    /// <summary>Runs and devices behind each of the outputs.</summary>
    internal IReadOnlyList<OutputFeed> Feeds { get; }

    /// <summary>The devices of all feeds, in their order.</summary>
    internal IReadOnlyList<FedDevice> Devices { get; }

    /// <summary>The boxes that feed them, each once.</summary>
    internal IReadOnlyList<DistributionBox> Boxes { get; }

    /// <summary>The places in <see cref="Devices"/> of those that a box feeds.</summary>
    internal int[] PlacesOf(DistributionBox box)
    {
        for (int i = 0; i < _places.Length; i++)
        {
            if (ReferenceEquals(Boxes[i], box)) return _places[i];
        }

        return [];
    }

    /// <summary>Whether any of the devices has a motor.</summary>
    internal bool HasMotor { get; }

    /// <summary>The shields that end at the devices.</summary>
    internal IReadOnlyList<VideoLink> Links { get; }

    /// <summary>The bonds of the grounds where those shields meet.</summary>
    internal IReadOnlyList<GroundBond> Bonds { get; }

    /// <summary>Whether return currents divide, so that it takes a network of both poles.</summary>
    internal bool SharesReturns { get; }

    /// <summary>One output as if nothing else were joined to what it feeds.</summary>
    internal static FeedGroup Alone(OutputFeed feed) => new([feed], [], []);

    internal static IReadOnlyList<FeedGroup> AllOf(Site site)
    {
        IReadOnlyList<OutputFeed> feeds = OutputFeed.AllOf(site);
        var groups = new FeedMerger(feeds);
        foreach (SiteRun run in site.Runs.Where(r => r.ReturnAt is not null)) groups.Join(run.To, run.ReturnAt!);
        JoinThroughShields(site, groups);
        return [.. groups.Merged().Select(merged => Make(site, merged))];
    }

    // Outputs hang together through every ground and every box that their shields reach, bonds included: two grounds
    // that are bonded to one box may close a ring of returns, and so may two boxes whose cameras share two grounds.
    private static void JoinThroughShields(Site site, FeedMerger groups)
    {
        var grounds = new Dictionary<string, string>(StringComparer.Ordinal);
        var boxes = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (VideoLink link in site.VideoLinks)
        {
            string junction = site.Index.Device(link.Device)!.At;
            Reach(grounds, link.Ground, junction);
            Reach(boxes, groups.BoxBehind(junction), junction);
        }

        foreach (GroundBond bond in site.Bonds) Reach(boxes, bond.Box, grounds[bond.Ground]);

        void Reach(Dictionary<string, string> places, string place, string junction)
        {
            if (places.TryGetValue(place, out string? first)) groups.Join(first, junction);
            else places.Add(place, junction);
        }
    }

    private static FeedGroup Make(Site site, IReadOnlyList<OutputFeed> feeds)
    {
        var names = new HashSet<string>(feeds.SelectMany(f => f.DevicesFed).Select(d => d.Name), StringComparer.Ordinal);
        VideoLink[] links = [.. site.VideoLinks.Where(l => names.Contains(l.Device))];
        GroundBond[] bonds = [.. site.Bonds.Where(b => links.Any(l => string.Equals(l.Ground, b.Ground, StringComparison.Ordinal)))];
        return new FeedGroup(feeds, links, bonds);
    }
}
