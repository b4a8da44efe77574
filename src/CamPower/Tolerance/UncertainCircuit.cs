using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Tolerance;

/// <summary>What a group of outputs feeds in one condition, for any deviations of its parts. SI doubles; one load a device, one current a
/// feed, in the group's order.</summary>
/// <remarks>Every device that its supply suits is taken to draw, down to any voltage: whether it is up is another question. The air around
/// a protective device is that around its box. Holds working memory: one thread at a time, <see cref="Copy"/> for another.</remarks>
internal abstract class UncertainCircuit
{
    private readonly double[] _setVolts, _leastOhms, _spanOhms;

    private protected UncertainCircuit(FeedGroup group, UncertainParts parts, Condition condition)
    {
        Group = group;
        Parts = parts;
        Condition = condition;
        Loads = FeedSolver.LoadsIn(condition, group, condition.MotorsMoving == 0 ? 0 : int.MaxValue);
        Draws = [.. group.Devices.Select(d => parts.DrawOf(d.Device))];
        Supplies = [.. group.Feeds.Select(f => parts.SupplyOf(f.Box))];
        Protections = [.. group.Feeds.Select(f => parts.ProtectionOf(f.Box, f.Output))];
        FeedOfDevice = [.. group.Devices.Select(d => IndexOfFeed(group, d))];
        Runs = [.. group.Feeds.SelectMany(f => f.Runs).Select(r => new UncertainRun(r, parts, condition.At.CableCelsius))];
        _setVolts = [.. group.Feeds.Select(f => f.Box.Supply.Output.SetVolts)];
        _leastOhms = [.. group.Feeds.Select(f => f.Output.Protection?.LeastOhms ?? 0)];
        _spanOhms = [.. group.Feeds.Select((f, i) => f.Output.Protection is ProtectiveDevice device && Protections[i] != UncertainParts.None
            ? (device.GreatestOhms * device.ResistanceGrowthIn(condition.At.BoxCelsius)) - device.LeastOhms
            : 0)];
        Relevant = [.. Runs.SelectMany(r => r.Places).Concat(Draws).Concat(Supplies).Concat(Protections)
            .Where(place => place != UncertainParts.None && parts.All[place].Range.HasWidth).Distinct().OrderBy(place => place)];
    }

    internal FeedGroup Group { get; }

    internal UncertainParts Parts { get; }

    internal Condition Condition { get; }

    /// <summary>What each device draws by its data sheet.</summary>
    internal Load[] Loads { get; }

    /// <summary>The places of the parts that its voltages depend on and that are uncertain at all.</summary>
    internal int[] Relevant { get; }

    /// <summary>The feed that each device hangs on.</summary>
    internal int[] FeedOfDevice { get; }

    /// <summary>Whether more of any resistance or load lowers every voltage where all loads draw more at less voltage: where no currents
    /// divide.</summary>
    internal abstract bool HasOneWayBack { get; }

    private protected int[] Draws { get; }

    private protected int[] Supplies { get; }

    private protected int[] Protections { get; }

    /// <summary>The runs of all feeds, in their order.</summary>
    private protected UncertainRun[] Runs { get; }

    internal static UncertainCircuit Of(FeedGroup group, UncertainParts parts, Condition condition) => group.SharesReturns
        ? new UncertainNetwork(group, parts, condition)
        : new UncertainTree(group, parts, condition);

    /// <summary>The same circuit for another thread.</summary>
    internal UncertainCircuit Copy() => Of(Group, Parts, Condition);

    /// <summary>Solves it, or gives 0 for everything and word that there is no operating point.</summary>
    /// <param name="deviations">One for each part of the site.</param>
    /// <param name="loads">What each device draws before its deviation: <see cref="Loads"/>, or others.</param>
    /// <param name="deviceVolts">Receives the voltage of each device. [V]</param>
    internal abstract bool TrySolve(double[] deviations, Load[] loads, double[] deviceVolts);

    /// <summary>The voltage of a feed's box. [V]</summary>
    internal double SourceVolts(int feed, double[] deviations) =>
        _setVolts[feed] * (1 + deviations[Supplies[feed]]);

    /// <summary>Resistance of a feed's protective device. [Ω]</summary>
    internal double ProtectionOhms(int feed, double[] deviations) => Protections[feed] == UncertainParts.None
        ? _leastOhms[feed]
        : _leastOhms[feed] + (deviations[Protections[feed]] * _spanOhms[feed]);

    /// <summary>What a device draws over its data sheet; 1 of one that is not of the site. [1]</summary>
    internal double DrawScale(int device, double[] deviations) => Draws[device] == UncertainParts.None ? 1 : 1 + deviations[Draws[device]];

    /// <summary>The current of a feed at voltages of its devices. [A]</summary>
    internal double FeedAmperes(int feed, double[] deviations, Load[] loads, double[] deviceVolts)
    {
        double amperes = 0;
        for (int i = 0; i < deviceVolts.Length; i++)
        {
            if (FeedOfDevice[i] == feed && deviceVolts[i] > 0) amperes += DrawScale(i, deviations) * loads[i].AmperesAt(deviceVolts[i]);
        }

        return amperes;
    }

    /// <summary>Loop resistance of the runs on the way to a junction: out, and back over the negatives that it uses; no protective device,
    /// no shields. [Ω]</summary>
    internal double LoopOhms(string junction, double[] deviations)
    {
        double ohms = 0;
        for (string? at = junction; at is not null; at = RunTo(at).From.JunctionName) ohms += RunOf(at).OutgoingOhms(deviations);
        foreach (SiteRun run in SiteRun.WayBack(junction, RunTo)) ohms += RunOf(run.To).ReturnOhms(deviations);
        return ohms;
    }

    /// <summary>Resistance of the whole way to a device and back, its protective device included. [Ω]</summary>
    internal double WholeWayOhms(int device, double[] deviations) =>
        ProtectionOhms(FeedOfDevice[device], deviations) + LoopOhms(Group.Devices[device].Device.At, deviations);

    private protected SiteRun RunTo(string junction) => Parts.Site.Runs[Parts.Site.Index.RunTo(junction)];

    private UncertainRun RunOf(string junction) => Runs[PlaceOfRun(junction)];

    private int PlaceOfRun(string junction)
    {
        int place = 0;
        foreach (SiteRun run in Group.Feeds.SelectMany(f => f.Runs))
        {
            if (string.Equals(run.To, junction, StringComparison.Ordinal)) return place;
            place++;
        }

        throw new InvalidOperationException($"No run of the group ends at {junction}.");
    }

    private static int IndexOfFeed(FeedGroup group, FedDevice device)
    {
        IReadOnlyList<OutputFeed> feeds = group.Feeds;
        int feed = 0;
        while (!feeds[feed].Devices.Contains(device)) feed++;
        return feed;
    }
}
