using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>The network of both poles of outputs whose returns meet: sources, protective devices, runs, devices, shields and
/// bonds.</summary>
/// <remarks>Loads are added in the order of the devices, so that the place of one is that of its device.</remarks>
/// <param name="group">The outputs.</param>
internal sealed class PoleNetwork(FeedGroup group)
{
    /// <summary>What a feed's protective device is called, and its resistance; null where there is none. [Ω]</summary>
    internal required Func<int, (string Name, double Ohms)?> Protection { get; init; }

    /// <summary>The voltage of a feed. [V]</summary>
    internal required Func<int, double> SourceVolts { get; init; }

    /// <summary>Resistance of both conductors of a run, by its place among the runs of all feeds. [Ω]</summary>
    internal required Func<SiteRun, int, (double Outgoing, double Return)> RunOhms { get; init; }

    /// <summary>What a device draws.</summary>
    internal required Func<int, Load> LoadOf { get; init; }

    internal static string OutgoingName(SiteRun run) => $"way to {run.To}";

    internal static string ReturnName(SiteRun run) => $"return from {run.To}";

    internal static string ShieldName(VideoLink link) => $"shield of {link.Device}";

    /// <summary>What a feed is called.</summary>
    internal static string NameOf(OutputFeed feed) => FeedingEnd(feed.Runs[0]);

    internal DcNetwork Build()
    {
        var builder = new DcNetworkBuilder();
        int place = 0;
        for (int feed = 0; feed < group.Feeds.Count; feed++)
        {
            AddSource(builder, feed);
            foreach (SiteRun run in group.Feeds[feed].Runs) AddRun(builder, run, RunOhms(run, place++));
        }

        for (int i = 0; i < group.Devices.Count; i++)
        {
            string junction = JunctionEnd(group.Devices[i].Device.At);
            builder.AddLoad(FormattableString.Invariant($"device {i}"), Plus(junction), Minus(junction), LoadOf(i));
        }

        AddShields(builder);
        return builder.Build(reference: Minus(BoxEnd(group.Feeds[0].Box.Name)));
    }

    private void AddSource(DcNetworkBuilder builder, int feed)
    {
        string output = NameOf(group.Feeds[feed]), source = output;
        if (Protection(feed) is (string name, double ohms))
        {
            source = $"supply of {output}";
            builder.AddBranch(name, Plus(source), Plus(output), DcNetworkBuilder.Snapped(ohms));
        }

        builder.AddSource(
            output, Plus(source), Minus(BoxEnd(group.Feeds[feed].Box.Name)), ElectricPotential.FromVolts(SourceVolts(feed)));
    }

    private static void AddRun(DcNetworkBuilder builder, SiteRun run, (double Outgoing, double Return) ohms)
    {
        string from = FeedingEnd(run), to = JunctionEnd(run.To);
        builder.AddBranch(OutgoingName(run), Plus(from), Plus(to), DcNetworkBuilder.Snapped(ohms.Outgoing));
        string negative = run.ReturnAt is string shared ? JunctionEnd(shared) : run.From.BoxName is string box ? BoxEnd(box) : from;
        builder.AddBranch(
            ReturnName(run), Minus(negative), Minus(to), DcNetworkBuilder.Snapped(run.ReturnAt is null ? ohms.Return : 0));
    }

    private void AddShields(DcNetworkBuilder builder)
    {
        foreach (VideoLink link in group.Links)
        {
            string junction = group.Devices.First(d => string.Equals(d.Device.Name, link.Device, StringComparison.Ordinal)).Device.At;
            builder.AddBranch(ShieldName(link), Minus(JunctionEnd(junction)), Minus(GroundEnd(link.Ground)), link.ShieldResistance);
        }

        IReadOnlyList<GroundBond> bonds = group.Bonds;
        for (int i = 0; i < bonds.Count; i++)
        {
            builder.AddBranch(FormattableString.Invariant($"bond {i}"), Minus(GroundEnd(bonds[i].Ground)), Minus(BoxEnd(bonds[i].Box)),
                bonds[i].Resistance);
        }
    }

    // People name boxes, junctions and grounds, and may give one name to several: the kind, put first, keeps them apart.
    private static string FeedingEnd(SiteRun run) =>
        run.From.JunctionName is string junction ? JunctionEnd(junction) : $"output {run.From}";

    private static string JunctionEnd(string name) => $"junction {name}";

    private static string BoxEnd(string name) => $"box {name}";

    private static string GroundEnd(string name) => $"ground {name}";

    private static string Plus(string name) => name + " +";

    private static string Minus(string name) => name + " -";
}
