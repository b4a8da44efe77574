using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>Outputs whose return currents divide between shared negatives, video shields and bonds: a network of both poles.</summary>
internal sealed class MeshedCircuit : FeedCircuit
{
    private readonly double[] _ohmsTo;
    private readonly Dictionary<SupplyLevel, DcNetwork> _networks;

    internal MeshedCircuit(FeedGroup group, double cableCelsius)
        : base(group)
    {
        _ohmsTo = [.. group.Devices.Select(d => d.Path.Sum(run => run.Run.OhmsAt(cableCelsius)))];
        _networks = new Dictionary<SupplyLevel, DcNetwork>
        {
            [SupplyLevel.Lowest] = NetworkOf(group, cableCelsius, SupplyLevel.Lowest),
            [SupplyLevel.Highest] = NetworkOf(group, cableCelsius, SupplyLevel.Highest),
        };
    }

    internal override double OhmsTo(int device) => _ohmsTo[device];

    internal override bool TrySolve(SupplyLevel level, Load[] loads, double[] deviceVolts)
    {
        NetworkSolution solution = Solve(level, loads);
        for (int i = 0; i < deviceVolts.Length; i++)
        {
            deviceVolts[i] = solution.HasOperatingPoint ? solution.AtLoad(LoadName(i)).Voltage.Volts : RunKernel.NoOperatingPoint;
        }

        return solution.HasOperatingPoint;
    }

    /// <summary>The current in each shield, from its device to its ground; 0 for all without an operating point. [A]</summary>
    internal double[] ShieldAmperes(SupplyLevel level, Load[] loads)
    {
        NetworkSolution solution = Solve(level, loads);
        return [.. Group.Links.Select(link => solution.HasOperatingPoint ? solution.CurrentIn(link.ToString()).Amperes : 0)];
    }

    private NetworkSolution Solve(SupplyLevel level, Load[] loads) => _networks[level]
        .WithLoads(Enumerable.Range(0, loads.Length).ToDictionary(LoadName, i => loads[i], StringComparer.Ordinal)).Solve();

    private static DcNetwork NetworkOf(FeedGroup group, double cableCelsius, SupplyLevel level)
    {
        var builder = new DcNetworkBuilder();
        foreach (OutputFeed feed in group.Feeds)
        {
            string output = FeedingEnd(feed.Runs[0]);
            builder.AddSource(output, Plus(output), Minus(BoxEnd(feed.Box.Name)), ElectricPotential.FromVolts(SupplyVolts(feed.Box, level)));
            foreach (SiteRun run in feed.Runs) AddRun(builder, run, cableCelsius);
        }

        for (int i = 0; i < group.Devices.Count; i++)
        {
            string junction = JunctionEnd(group.Devices[i].Device.At);
            builder.AddLoad(LoadName(i), Plus(junction), Minus(junction), Load.None);
        }

        foreach (VideoLink link in group.Links)
        {
            string junction = group.Devices.First(d => string.Equals(d.Device.Name, link.Device, StringComparison.Ordinal)).Device.At;
            builder.AddBranch(link.ToString(), Minus(JunctionEnd(junction)), Minus(GroundEnd(link.Ground)), link.ShieldResistance);
        }

        foreach (GroundBond bond in group.Bonds) builder.AddBranch(bond.ToString(), Minus(GroundEnd(bond.Ground)), Minus(BoxEnd(bond.Box)), bond.Resistance);
        return builder.Build(reference: Minus(BoxEnd(group.Feeds[0].Box.Name)));
    }

    private static void AddRun(DcNetworkBuilder builder, SiteRun run, double celsius)
    {
        string from = FeedingEnd(run), to = JunctionEnd(run.To);
        builder.AddBranch(run.ToString(), Plus(from), Plus(to), Resistance(run.Run.OutgoingOhmsAt(celsius)));
        string negative = run.ReturnAt is string shared ? JunctionEnd(shared) : run.From.BoxName is string box ? BoxEnd(box) : from;
        double returnOhms = run.ReturnAt is null ? run.Run.ReturnOhmsAt(celsius) : 0;
        builder.AddBranch(run + " return", Minus(negative), Minus(to), Resistance(returnOhms));
    }

    // Less than a microohm, a few millimetres of the thickest wire, counts as none.
    private static ElectricResistance Resistance(double ohms) => ElectricResistance.FromOhms(ohms < 1e-6 ? 0 : ohms);

    // Boxes, junctions and grounds are named by people, who may give one name to several: the kind keeps them apart.
    private static string FeedingEnd(SiteRun run) => run.From.JunctionName is string junction ? JunctionEnd(junction) : $"output {run.From}";

    private static string JunctionEnd(string name) => $"junction {name}";

    private static string BoxEnd(string name) => $"box {name}";

    private static string GroundEnd(string name) => $"ground {name}";

    private static string LoadName(int device) => FormattableString.Invariant($"device {device}");

    private static string Plus(string name) => name + " +";

    private static string Minus(string name) => name + " -";
}
