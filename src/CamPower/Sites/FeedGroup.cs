using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Sites;

/// <summary>Outputs that must be solved together: most often one, more where their returns meet in a shared negative or in video shields.</summary>
internal sealed class FeedGroup
{
    private FeedGroup(IReadOnlyList<OutputFeed> feeds, IReadOnlyList<VideoLink> links, IReadOnlyList<GroundBond> bonds)
    {
        Feeds = feeds;
        Links = links;
        Bonds = bonds;
        Devices = [.. feeds.SelectMany(f => f.Devices)];
        HasMotor = feeds.Any(f => f.HasMotor);
    }

    /// <summary>What each of the outputs feeds.</summary>
    internal IReadOnlyList<OutputFeed> Feeds { get; }

    /// <summary>The devices of all feeds, in their order.</summary>
    internal IReadOnlyList<FedDevice> Devices { get; }

    /// <summary>Whether any of the devices has a motor.</summary>
    internal bool HasMotor { get; }

    /// <summary>The shields that end at the devices.</summary>
    internal IReadOnlyList<VideoLink> Links { get; }

    /// <summary>The bonds of the grounds where those shields meet.</summary>
    internal IReadOnlyList<GroundBond> Bonds { get; }

    /// <summary>Whether return currents divide, so that it takes a network of both poles.</summary>
    internal bool SharesReturns => Links.Count > 0 || Feeds.Any(f => f.Runs.Any(r => r.ReturnAt is not null));

    internal static IReadOnlyList<FeedGroup> AllOf(Site site)
    {
        IReadOnlyList<OutputFeed> feeds = OutputFeed.AllOf(site);
        var groups = new FeedMerger(feeds);
        foreach (SiteRun run in site.Runs.Where(r => r.ReturnAt is not null)) groups.Join(run.To, run.ReturnAt!);
        ILookup<string, string> devicesAt = site.Devices.ToLookup(d => d.Name, d => d.At, StringComparer.Ordinal);
        foreach (IGrouping<string, VideoLink> ground in site.VideoLinks.GroupBy(l => l.Ground, StringComparer.Ordinal))
        {
            string[] junctions = [.. ground.Select(link => devicesAt[link.Device].First())];
            foreach (string junction in junctions) groups.Join(junctions[0], junction);
        }

        return [.. groups.Merged().Select(merged => Make(site, merged))];
    }

    private static FeedGroup Make(Site site, IReadOnlyList<OutputFeed> feeds)
    {
        var names = new HashSet<string>(feeds.SelectMany(f => f.DevicesFed).Select(d => d.Name), StringComparer.Ordinal);
        VideoLink[] links = [.. site.VideoLinks.Where(l => names.Contains(l.Device))];
        GroundBond[] bonds = [.. site.Bonds.Where(b => links.Any(l => string.Equals(l.Ground, b.Ground, StringComparison.Ordinal)))];
        return new FeedGroup(feeds, links, bonds);
    }
}
