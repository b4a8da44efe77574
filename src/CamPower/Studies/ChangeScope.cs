using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Studies;

/// <summary>The parts of a site that a change could help at, for what a finding is about.</summary>
internal sealed class ChangeScope
{
    private ChangeScope(Site site, IReadOnlyList<DistributionBox> boxes, IReadOnlyList<OutputFeed> feeds, IReadOnlyList<SiteRun> runs,
        FedDevice? device)
    {
        Site = site;
        Boxes = boxes;
        Feeds = feeds;
        Runs = runs;
        Device = device;
    }

    internal Site Site { get; }

    /// <summary>The boxes that feed it.</summary>
    internal IReadOnlyList<DistributionBox> Boxes { get; }

    /// <summary>What the outputs feed that it is behind.</summary>
    internal IReadOnlyList<OutputFeed> Feeds { get; }

    /// <summary>The runs whose conductors matter to it.</summary>
    internal IReadOnlyList<SiteRun> Runs { get; }

    /// <summary>The device, or null where it is about something else.</summary>
    internal FedDevice? Device { get; }

    /// <summary>What a finding is about is a whole box or more.</summary>
    internal bool IsOfWholeBox { get; private init; }

    internal static ChangeScope Of(Site site, Subject about)
    {
        OutputFeed[] feeds = [.. site.Feeds.SelectMany(group => group.Feeds)];
        return about.Kind switch
        {
            SubjectKind.Device => OfDevice(site, feeds, about.Name),
            SubjectKind.Run => OfRun(site, feeds, about.Name),
            SubjectKind.Output => OfFeeds(site, [.. feeds.Where(feed => IsNamed(feed, about.Name))]),
            SubjectKind.Box => OfBoxes(site, feeds, box => Same(box.Name, about.Name)),
            SubjectKind.Cabinet => OfBoxes(site, feeds, box => Same(box.Cabinet?.Name, about.Name)),
            SubjectKind.Receptacle => OfBoxes(site, feeds, box => Same(box.Receptacle?.Name, about.Name)),
            _ => new ChangeScope(site, [], [], [], null),
        };
    }

    private static ChangeScope OfDevice(Site site, OutputFeed[] feeds, string name)
    {
        OutputFeed? feed = Array.Find(feeds, f => f.DevicesFed.Any(d => Same(d.Name, name)));
        if (feed is null) return new ChangeScope(site, [], [], [], null);
        FedDevice device = feed.Devices.First(d => Same(d.Device.Name, name));
        return new ChangeScope(site, [feed.Box], [feed], device.Path, device);
    }

    private static ChangeScope OfRun(Site site, OutputFeed[] feeds, string name)
    {
        OutputFeed? feed = Array.Find(feeds, f => f.Runs.Any(r => Same(Subject.Of(r).Name, name)));
        return feed is null
            ? new ChangeScope(site, [], [], [], null)
            : new ChangeScope(site, [feed.Box], [feed], [feed.Runs.First(r => Same(Subject.Of(r).Name, name))], null);
    }

    private static ChangeScope OfFeeds(Site site, OutputFeed[] feeds) =>
        new(site, [.. feeds.Select(f => f.Box).Distinct()], feeds, [.. feeds.SelectMany(f => f.Runs)], null);

    private static ChangeScope OfBoxes(Site site, OutputFeed[] feeds, Func<DistributionBox, bool> isMeant)
    {
        DistributionBox[] boxes = [.. site.Boxes.Where(isMeant)];
        return new ChangeScope(site, boxes, [.. feeds.Where(f => boxes.Contains(f.Box))], [], null) { IsOfWholeBox = true };
    }

    private static bool IsNamed(OutputFeed feed, string name) => Same(Subject.Of(feed.Box, feed.Output).Name, name);

    private static bool Same(string? one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
