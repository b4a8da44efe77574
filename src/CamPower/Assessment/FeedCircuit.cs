using System;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>What one output feeds, as a circuit at one cable temperature. SI doubles; one load a device, in the feed's order.</summary>
internal sealed class FeedCircuit
{
    private readonly int[] _parents = [];
    private readonly double[] _ohms = [];
    private readonly double _singleOhms;
    private readonly int _runs;

    internal FeedCircuit(OutputFeed feed, double cableCelsius)
    {
        IsSingle = feed.IsSingle;
        if (IsSingle)
        {
            _singleOhms = feed.Runs[0].Run.OhmsAt(cableCelsius);
            return;
        }

        // Each device is a node of its own, at the end of its run without resistance.
        _runs = feed.Runs.Count;
        _parents = [.. feed.Parents, .. feed.Devices.Select(d => d.RunIndex)];
        _ohms = [.. feed.Runs.Select(r => r.Run.OhmsAt(cableCelsius)), .. feed.Devices.Select(_ => 0.0)];
    }

    /// <summary>One run with one device: the closed form serves, and it is resistance alone that matters.</summary>
    internal bool IsSingle { get; }

    /// <summary>Loop resistance of the whole way to a device. [Ω]</summary>
    internal double OhmsTo(int device)
    {
        double ohms = _singleOhms;
        for (int node = IsSingle ? -1 : _runs + device; node >= 0; node = _parents[node]) ohms += _ohms[node];
        return ohms;
    }

    /// <summary>Fills in the voltage of every device, or 0 for each and word that there is no operating point.</summary>
    internal bool TrySolve(double sourceVolts, Load[] loads, double[] deviceVolts)
    {
        if (IsSingle)
        {
            deviceVolts[0] = RunKernel.LoadVolts(sourceVolts, _singleOhms, loads[0]);
            return deviceVolts[0] > RunKernel.NoOperatingPoint;
        }

        var nodeLoads = new Load[_parents.Length];
        for (int i = 0; i < _runs; i++) nodeLoads[i] = Load.None;
        loads.CopyTo(nodeLoads, _runs);
        var volts = new double[_parents.Length];
        bool solved = RadialKernel.TrySolve(_parents, _ohms, nodeLoads, sourceVolts, volts);
        if (!solved) Array.Clear(volts, 0, volts.Length);
        Array.Copy(volts, _runs, deviceVolts, 0, deviceVolts.Length);
        return solved;
    }

    /// <summary>Voltage of one device when its load is another; 0 without an operating point. [V]</summary>
    internal double VoltsWith(int device, Load instead, double sourceVolts, Load[] loads)
    {
        var changed = (Load[])loads.Clone();
        changed[device] = instead;
        var volts = new double[loads.Length];
        return TrySolve(sourceVolts, changed, volts) ? volts[device] : RunKernel.NoOperatingPoint;
    }

    /// <summary>Whether a device that turns on at a voltage can climb from there: the circuit gives more current than it takes.</summary>
    internal bool CanClimbFrom(double volts, int device, double sourceVolts, Load[] loads)
    {
        // No more than a load may be: a turn-on voltage of nearly nothing asks for more amperes than any circuit has.
        var taken = UnitsNet.ElectricCurrent.FromAmperes(Math.Min(loads[device].AmperesAt(volts), Load.MostAmperes));
        return VoltsWith(device, Load.ConstantCurrent(taken), sourceVolts, loads) >= volts;
    }
}
