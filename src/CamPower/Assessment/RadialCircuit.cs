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
    private RadialKernel? _kernel;
    private Load[] _nodeLoads = [];
    private double[] _nodeVolts = [];
    private LoadShares? _shares;

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

    internal override FeedCircuit OfOneThread()
    {
        var own = (RadialCircuit)MemberwiseClone();
        own._kernel = new RadialKernel([.. _parents.Select((parent, i) => new Rung(parent, _ohmsAtLowest[i]))], sourceVolts: 1);
        own._nodeLoads = [.. _parents.Select(_ => Load.None)];
        own._nodeVolts = new double[_parents.Length];
        own._shares = null;
        return own;
    }

    internal override bool TrySolve(RailVolts rail, Load[] loads, double[] deviceVolts)
    {
        if (_kernel is not null && !rail.IsHighest) return TrySolveInPlace(_kernel, rail.Of(Group.Feeds[0].Box), loads, deviceVolts);
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

    private bool TrySolveInPlace(RadialKernel kernel, double sourceVolts, Load[] loads, double[] deviceVolts)
    {
        for (int i = 0; i < loads.Length; i++)
        {
            if (ReferenceEquals(_nodeLoads[_firstDevice + i], loads[i])) continue;
            _nodeLoads[_firstDevice + i] = loads[i];
            _shares = null;
        }

        _shares ??= new LoadShares(_nodeLoads, [.. Enumerable.Range(0, _nodeLoads.Length)], _nodeLoads.Length);
        kernel.Feed(sourceVolts);
        kernel.OpenCircuit(_nodeVolts);
        int iterations = 0;
        bool solved = Newton.TryDescend(kernel, _shares, _nodeVolts, ref iterations);
        if (!solved) Array.Clear(_nodeVolts, 0, _nodeVolts.Length);
        Array.Copy(_nodeVolts, _firstDevice, deviceVolts, 0, deviceVolts.Length);
        return solved;
    }

    private double[] OhmsOf(OutputFeed feed, double protectionOhms) =>
        [protectionOhms, .. feed.Runs.Select(r => r.Run.OhmsAt(CableCelsius)), .. feed.Devices.Select(_ => 0.0)];
}
