using System;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>One output with a tree of runs, each with a return conductor of its own.</summary>
internal sealed class RadialCircuit : FeedCircuit
{
    private readonly int[] _parents;
    private readonly double[] _ohms;
    private readonly int _runs;

    internal RadialCircuit(FeedGroup group, double cableCelsius)
        : base(group, cableCelsius)
    {
        // Each device is a node of its own, at the end of its run without resistance.
        OutputFeed feed = group.Feeds[0];
        _runs = feed.Runs.Count;
        _parents = [.. feed.Parents, .. feed.Devices.Select(d => d.RunIndex)];
        _ohms = [.. feed.Runs.Select(r => r.Run.OhmsAt(cableCelsius)), .. feed.Devices.Select(_ => 0.0)];
    }

    // The network of both poles shows the same circuit with its nodes by name.
    internal override Derivation Explain(Load[] loads) => new MeshedCircuit(Group, CableCelsius).Explain(loads);

    internal override double OhmsTo(int device)
    {
        double ohms = 0;
        for (int node = _runs + device; node >= 0; node = _parents[node]) ohms += _ohms[node];
        return ohms;
    }

    internal override bool TrySolve(SupplyLevel level, Load[] loads, double[] deviceVolts)
    {
        var nodeLoads = new Load[_parents.Length];
        for (int i = 0; i < _runs; i++) nodeLoads[i] = Load.None;
        loads.CopyTo(nodeLoads, _runs);
        var volts = new double[_parents.Length];
        bool solved = RadialKernel.TrySolve(_parents, _ohms, nodeLoads, SupplyVolts(Group.Feeds[0].Box, level), volts);
        if (!solved) Array.Clear(volts, 0, volts.Length);
        Array.Copy(volts, _runs, deviceVolts, 0, deviceVolts.Length);
        return solved;
    }
}
