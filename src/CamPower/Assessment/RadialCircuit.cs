using System;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>One output with a tree of runs, each with a return conductor of its own.</summary>
internal sealed class RadialCircuit : FeedCircuit
{
    private readonly AirOfBoxes _air;
    private readonly int[] _parents;
    private readonly double[] _ohmsAtLowest, _ohmsAtHighest;
    private readonly int _firstDevice;

    internal RadialCircuit(FeedGroup group, double cableCelsius, AirOfBoxes air)
        : base(group, cableCelsius, air)
    {
        // The output behind its protective device, then the end of each run; each device is a node of its own, at the end
        // of its run without resistance.
        _air = air;
        OutputFeed feed = group.Feeds[0];
        _firstDevice = 1 + feed.Runs.Count;
        _parents = [-1, .. feed.Parents.Select(run => 1 + run), .. feed.Devices.Select(d => 1 + d.RunIndex)];
        _ohmsAtLowest = OhmsOf(feed, GreatestProtectionOhms(feed));
        _ohmsAtHighest = OhmsOf(feed, LeastProtectionOhms(feed));
    }

    // The network of both poles shows the same circuit with its nodes by name.
    internal override Derivation Explain(RailVolts rail, Load[] loads) => new MeshedCircuit(Group, CableCelsius, _air).Explain(rail, loads);

    internal override double OhmsTo(int device)
    {
        double ohms = 0;
        for (int node = _firstDevice + device; node >= 0; node = _parents[node]) ohms += _ohmsAtLowest[node];
        return ohms;
    }

    internal override bool TrySolve(RailVolts rail, Load[] loads, double[] deviceVolts)
    {
        var nodeLoads = new Load[_parents.Length];
        for (int i = 0; i < _firstDevice; i++) nodeLoads[i] = Load.None;
        loads.CopyTo(nodeLoads, _firstDevice);
        var volts = new double[_parents.Length];
        double[] ohms = rail.IsHighest ? _ohmsAtHighest : _ohmsAtLowest;
        bool solved = RadialKernel.TrySolve(_parents, ohms, nodeLoads, rail.Of(Group.Feeds[0].Box), volts);
        if (!solved) Array.Clear(volts, 0, volts.Length);
        Array.Copy(volts, _firstDevice, deviceVolts, 0, deviceVolts.Length);
        return solved;
    }

    private double[] OhmsOf(OutputFeed feed, double protectionOhms) =>
        [protectionOhms, .. feed.Runs.Select(r => r.Run.OhmsAt(CableCelsius)), .. feed.Devices.Select(_ => 0.0)];
}
