using System;
using System.Collections.Generic;
using System.Linq;
using System.Runtime.CompilerServices;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>Outputs whose return currents divide between shared negatives, video shields and bonds: a network of both poles.</summary>
internal sealed class MeshedCircuit : FeedCircuit
{
    private readonly Dictionary<string, SiteRun> _runTo;

    // One for each voltage that it is solved for, as long as anybody asks for that: even another voltage alone takes longer than to solve.
    private readonly ConditionalWeakTable<RailVolts, Built> _networks = new();
    private InPlace? _inPlace;

    // To build one takes longest. Two threads may do so at once, and find the same.
    private DcNetwork? _atLowest, _atHighest;

    internal MeshedCircuit(FeedGroup group, double cableCelsius, AirOfBoxes air)
        : base(group, cableCelsius, air) =>
        _runTo = group.Feeds.SelectMany(f => f.Runs).ToDictionary(run => run.To, StringComparer.Ordinal);

    /// <remarks>Out over the device's own runs, back over the negatives that it shares; the ways through shields are not counted.</remarks>
    internal override double OhmsTo(int device)
    {
        IReadOnlyList<SiteRun> path = Group.Devices[device].Path;
        double ohms = GreatestProtectionOhms(FeedOf(path)) + path.Sum(run => run.Run.OutgoingOhmsAt(CableCelsius));
        foreach (SiteRun run in SiteRun.WayBack(path[path.Count - 1].To, junction => _runTo[junction]))
        {
            ohms += run.Run.ReturnOhmsAt(CableCelsius);
        }

        return ohms;
    }

    internal override Derivation Explain(RailVolts rail, Load[] loads) => Solve(rail, loads).Explain();

    internal override VoltageProfile? ProfileTo(int device, RailVolts rail, Load[] loads)
    {
        IReadOnlyList<SiteRun> path = Group.Devices[device].Path;
        NetworkSolution solution = Solve(rail, loads);
        return solution.HasOperatingPoint && path.All(run => run.ReturnAt is null)
            ? new VoltageProfile(rail.Of(Group.Devices[device].Box),
                LostInProtection(FeedOf(path), part => solution.CurrentIn(part.Name).Amperes).Concat(path.SelectMany(Parts)))
            : null;

        // What goes out in a run need not come back in it. The branch of the return runs from the supply to the device.
        IEnumerable<(RunPart, double)> Parts(SiteRun run)
        {
            double going = solution.CurrentIn(PoleNetwork.OutgoingName(run)).Amperes,
                back = -solution.CurrentIn(PoleNetwork.ReturnName(run)).Amperes;
            return run.Run.Parts.Select(
                part => (part, (part.OutgoingOhmsAt(CableCelsius) * going) + (part.ReturnOhmsAt(CableCelsius) * back)));
        }
    }

    /// <remarks>Outputs of several boxes may hold different voltages: these are solved as ever.</remarks>
    internal override FeedCircuit OfOneThread()
    {
        DcNetwork network = _atLowest ??= NetworkOf(RailVolts.Lowest);
        if (Group.Boxes.Count > 1 || network.Plan is not Mesh mesh) return this;
        var own = (MeshedCircuit)MemberwiseClone();
        own._inPlace = new InPlace(mesh, RailVolts.Lowest.Of(Group.Boxes[0]));
        return own;
    }

    internal override bool TrySolve(RailVolts rail, Load[] loads, double[] deviceVolts)
    {
        if (!rail.IsHighest && _inPlace?.TrySolve(rail.Of(Group.Boxes[0]), loads, deviceVolts) is bool isSolved) return isSolved;
        NetworkSolution solution = Solve(rail, loads);
        for (int i = 0; i < deviceVolts.Length; i++)
        {
            deviceVolts[i] = solution.HasOperatingPoint ? solution.VoltsAt(i) : RunKernel.NoOperatingPoint;
        }

        return solution.HasOperatingPoint;
    }

    /// <summary>The current in each shield, from its device to its ground, while each device draws a current; null where that leaves a
    /// device without voltage. [A]</summary>
    /// <remarks>The currents alone decide how they divide on their way back, whatever the voltage of the supplies.</remarks>
    internal double[]? ShieldAmperes(IEnumerable<double> deviceAmperes)
    {
        Load[] loads = [.. deviceAmperes.Select(amperes => Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes)))];
        NetworkSolution solution = Solve(RailVolts.Highest, loads);
        return solution.HasOperatingPoint
            ? [.. Group.Links.Select(link => solution.CurrentIn(PoleNetwork.ShieldName(link)).Amperes)]
            : null;
    }

    private OutputFeed FeedOf(IReadOnlyList<SiteRun> path) => Group.Feeds.First(feed => feed.Runs.Contains(path[0]));

    private NetworkSolution Solve(RailVolts rail, Load[] loads) =>
        _networks.GetValue(rail, _ => new Built()).At(rail, NetworkAt).WithLoads(loads).Solve();

    private DcNetwork NetworkAt(RailVolts rail) => (rail.IsHighest ? _atHighest ??= NetworkOf(rail) : _atLowest ??= NetworkOf(rail))
        .WithSourceVolts([.. Group.Feeds.Select(feed => rail.Of(feed.Box))]);

    // The network of one box, whatever its voltage: all outputs have the same, so that none feeds back into another.
    private sealed class InPlace(Mesh mesh, double builtVolts)
    {
        private readonly MeshSolver _solver = new(mesh);
        private readonly Load[] _loads = new Load[mesh.RowOf.Length];
        private LoadShares? _shares;

        // Null where Newton's method fails and that proves nothing.
        internal bool? TrySolve(double volts, Load[] loads, double[] deviceVolts)
        {
            for (int i = 0; i < loads.Length; i++)
            {
                if (ReferenceEquals(_loads[i], loads[i])) continue;
                _loads[i] = loads[i];
                _shares = null;
            }

            _shares ??= new LoadShares(_loads, mesh.RowOf, _solver.Rows);
            _solver.SourceShare = volts / builtVolts;
            _solver.OpenCircuit(deviceVolts);
            int iterations = 0;
            if (Newton.TryDescend(_solver, _shares, deviceVolts, ref iterations)) return true;
            Array.Clear(deviceVolts, 0, deviceVolts.Length);
            return mesh.IsConclusive(_loads) ? false : null;
        }
    }

    // The network of a rail, built anew where that has moved.
    private sealed class Built
    {
        private DcNetwork? _network;
        private double _volts;

        internal DcNetwork At(RailVolts rail, Func<RailVolts, DcNetwork> network)
        {
            if (_network is not null && rail.OwnVolts.Equals(_volts)) return _network;
            _volts = rail.OwnVolts;
            return _network = network(rail);
        }
    }

    private DcNetwork NetworkOf(RailVolts rail) => new PoleNetwork(Group)
    {
        Protection = feed => ProtectionOf(Group.Feeds[feed]) is Joint protection
            ? (protection.Name,
                rail.IsHighest ? LeastProtectionOhms(Group.Feeds[feed]) : GreatestProtectionOhms(Group.Feeds[feed]))
            : null,
        SourceVolts = feed => rail.Of(Group.Feeds[feed].Box),
        RunOhms = (run, _) => (run.Run.OutgoingOhmsAt(CableCelsius), run.Run.ReturnOhmsAt(CableCelsius)),
        LoadOf = _ => Load.None,
    }.Build();
}
