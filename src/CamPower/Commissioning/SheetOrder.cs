using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Commissioning;

/// <summary>Which readings a sheet has, and their order.</summary>
internal static class SheetOrder
{
    /// <summary>Dead before energized, one output before the next, and what is forced at the end.</summary>
    internal static List<ReadingPoint> PointsOf(ReadingModel model)
    {
        IReadOnlyList<FeedGroup> groups = model.Site.Feeds;
        OutputFeed[] feeds = [.. groups.SelectMany(g => g.Feeds)];
        return
        [
            .. feeds.Select(f => Pair(f, ReadingState.Dead)),
            .. feeds.Where(f => f.Devices.Count > 0).SelectMany(Loops),
            .. model.Site.Boxes.Where(b => feeds.Any(f => f.Box == b)).Select(b => ReadingPoint.AtSupply(b.Name, ReadingState.Unloaded)),
            .. groups.SelectMany(Energized),
            .. groups.SelectMany(Forced),
            .. model.Site.Boxes.Where(b => feeds.Any(f => f.Box == b && HasInfrared(f)))
                .Select(b => ReadingPoint.AtSupply(b.Name, ReadingState.InfraredForced)),
        ];
    }

    /// <summary>Whether covering a light sensor changes what an output feeds.</summary>
    private static bool HasInfrared(OutputFeed feed) => feed.Devices.Any(HasInfrared);

    private static bool HasInfrared(FedDevice fed) =>
        fed.Accepted is not null && fed.Device.Model.Draw is ComponentDraw draw && draw.Infrared != Load.None;

    private static IEnumerable<ReadingPoint> Loops(OutputFeed feed) =>
    [
        .. feed.Devices.Select(d => ReadingPoint.AtDevice(ReadingKind.LoopResistance, d.Device.Name, ReadingState.FarEndJumpered)),
        Pair(feed, ReadingState.JumperRemoved),
    ];

    // Where returns meet, a voltage counts on all outputs of the group: they are read once all of them run.
    private static IEnumerable<ReadingPoint> Energized(FeedGroup group)
    {
        foreach (OutputFeed feed in group.Feeds)
        {
            foreach (FedDevice fed in feed.Devices) yield return AtPlug(fed, ReadingState.DeviceUnplugged);
            if (group.Feeds.Count > 1) continue;
            foreach (ReadingPoint point in Of(feed, ReadingState.Running)) yield return point;
        }

        if (group.Feeds.Count == 1) yield break;
        foreach (ReadingPoint point in group.Feeds.SelectMany(f => Of(f, ReadingState.Running))) yield return point;
    }

    private static IEnumerable<ReadingPoint> Forced(FeedGroup group) => group.Feeds.Any(HasInfrared)
        ? group.Feeds.SelectMany(f => Of(f, ReadingState.InfraredForced))
        : [];

    private static IEnumerable<ReadingPoint> Of(OutputFeed feed, ReadingState state)
    {
        FedDevice[] connected = [.. feed.Devices.Where(d => d.Accepted is not null)];
        return connected.Length == 0
            ? []
            : [.. connected.Select(d => AtPlug(d, state)),
                ReadingPoint.AtOutput(ReadingKind.OutputCurrent, feed.Box.Name, feed.Output.Number, state)];
    }

    private static ReadingPoint AtPlug(FedDevice fed, ReadingState state) =>
        ReadingPoint.AtDevice(ReadingKind.PlugVoltage, fed.Device.Name, state);

    private static ReadingPoint Pair(OutputFeed feed, ReadingState state) =>
        ReadingPoint.AtOutput(ReadingKind.PairResistance, feed.Box.Name, feed.Output.Number, state);
}
