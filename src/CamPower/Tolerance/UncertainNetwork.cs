using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Tolerance;

/// <summary>Outputs whose returns meet: a network of both poles, built anew for each vector of deviations.</summary>
internal sealed class UncertainNetwork(FeedGroup group, UncertainParts parts, Condition condition)
    : UncertainCircuit(group, parts, condition)
{
    /// <remarks>Shared negatives are a tree of their own; shields and bonds close rings.</remarks>
    internal override bool HasOneWayBack => Group.Links.Count == 0;

    internal override bool TrySolve(double[] deviations, Load[] loads, double[] deviceVolts)
    {
        NetworkSolution solution = NetworkOf(deviations, loads).Solve();
        for (int i = 0; i < deviceVolts.Length; i++)
        {
            deviceVolts[i] = solution.HasOperatingPoint ? solution.AtLoad(LoadName(i)).Voltage.Volts : RunKernel.NoOperatingPoint;
        }

        return solution.HasOperatingPoint;
    }

    private DcNetwork NetworkOf(double[] deviations, Load[] loads)
    {
        var builder = new DcNetworkBuilder();
        int place = 0;
        for (int feed = 0; feed < Group.Feeds.Count; feed++)
        {
            OutputFeed fed = Group.Feeds[feed];
            string output = FeedingEnd(fed.Runs[0]), source = $"supply of {output}";
            builder.AddBranch($"protection of {output}", Plus(source), Plus(output), Ohms(ProtectionOhms(feed, deviations)));
            builder.AddSource(
                output, Plus(source), Minus(BoxEnd(fed.Box.Name)), ElectricPotential.FromVolts(SourceVolts(feed, deviations)));
            foreach (SiteRun run in fed.Runs) AddRun(builder, run, Runs[place++], deviations);
        }

        for (int i = 0; i < loads.Length; i++)
        {
            string junction = JunctionEnd(Group.Devices[i].Device.At);
            builder.AddLoad(LoadName(i), Plus(junction), Minus(junction), Scaled(loads[i], DrawScale(i, deviations)));
        }

        AddShields(builder);
        return builder.Build(reference: Minus(BoxEnd(Group.Feeds[0].Box.Name)));
    }

    private void AddShields(DcNetworkBuilder builder)
    {
        foreach (VideoLink link in Group.Links)
        {
            string junction = Group.Devices.First(d => string.Equals(d.Device.Name, link.Device, StringComparison.Ordinal)).Device.At;
            builder.AddBranch(link.ToString(), Minus(JunctionEnd(junction)), Minus(GroundEnd(link.Ground)), link.ShieldResistance);
        }

        IReadOnlyList<GroundBond> bonds = Group.Bonds;
        for (int i = 0; i < bonds.Count; i++)
        {
            builder.AddBranch(FormattableString.Invariant($"bond {i}"), Minus(GroundEnd(bonds[i].Ground)), Minus(BoxEnd(bonds[i].Box)),
                bonds[i].Resistance);
        }
    }

    private static void AddRun(DcNetworkBuilder builder, SiteRun run, UncertainRun uncertain, double[] deviations)
    {
        string from = FeedingEnd(run), to = JunctionEnd(run.To);
        builder.AddBranch($"way to {run.To}", Plus(from), Plus(to), Ohms(uncertain.OutgoingOhms(deviations)));
        string negative = run.ReturnAt is string shared ? JunctionEnd(shared) : run.From.BoxName is string box ? BoxEnd(box) : from;
        builder.AddBranch($"return from {run.To}", Minus(negative), Minus(to),
            Ohms(run.ReturnAt is null ? uncertain.ReturnOhms(deviations) : 0));
    }

    private static ElectricResistance Ohms(double ohms) => DcNetworkBuilder.Snapped(ohms);

    private static string FeedingEnd(SiteRun run) =>
        run.From.JunctionName is string junction ? JunctionEnd(junction) : $"output {run.From}";

    private static string JunctionEnd(string name) => $"junction {name}";

    private static string BoxEnd(string name) => $"box {name}";

    private static string GroundEnd(string name) => $"ground {name}";

    private static string LoadName(int device) => FormattableString.Invariant($"device {device}");

    private static string Plus(string name) => name + " +";

    private static string Minus(string name) => name + " -";
}
