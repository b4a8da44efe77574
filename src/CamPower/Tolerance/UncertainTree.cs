using System;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Tolerance;

/// <summary>One output with runs that each have a return of their own: closed form for one run and one device, else a tree of
/// loops.</summary>
internal sealed class UncertainTree : UncertainCircuit
{
    private readonly OutputFeed _feed;
    private readonly int[] _parents, _rowOf;
    private readonly int _firstDevice;
    private readonly Rung[] _rungs;
    private readonly double[] _volts;

    internal UncertainTree(FeedGroup group, UncertainParts parts, Condition condition)
        : base(group, parts, condition)
    {
        // The output behind its protective device, then the end of each run, then each device at the end of its run.
        _feed = group.Feeds[0];
        _firstDevice = 1 + _feed.Runs.Count;
        _parents = [-1, .. _feed.Parents.Select(run => 1 + run), .. _feed.Devices.Select(d => 1 + d.RunIndex)];
        _rowOf = [.. _feed.Devices.Select((_, i) => _firstDevice + i)];
        _rungs = new Rung[_parents.Length];
        _volts = new double[_parents.Length];
    }

    internal override bool HasOneWayBack => true;

    internal override bool TrySolve(double[] deviations, Load[] loads, double[] deviceVolts)
    {
        double source = SourceVolts(0, deviations), protection = ProtectionOhms(0, deviations);
        if (Runs.Length == 1 && loads.Length == 1)
        {
            // A load that draws s times its current drops as much in R as itself would in s·R.
            double ohms = (protection + Runs[0].Ohms(deviations)) * DrawScale(0, deviations);
            deviceVolts[0] = RunKernel.LoadVolts(source, ohms, loads[0]);
            return deviceVolts[0] > RunKernel.NoOperatingPoint;
        }

        return TrySolveTree(source, protection, deviations, loads, deviceVolts);
    }

    private bool TrySolveTree(double source, double protection, double[] deviations, Load[] loads, double[] deviceVolts)
    {
        for (int node = 0; node < _rungs.Length; node++)
        {
            double ohms = node == 0 ? protection : node < _firstDevice ? Runs[node - 1].Ohms(deviations) : 0;
            _rungs[node] = new Rung(_parents[node], ohms);
        }

        var scaled = new Load[loads.Length];
        for (int i = 0; i < loads.Length; i++) scaled[i] = loads[i].Scaled(DrawScale(i, deviations));
        int iterations = 0;
        var kernel = new RadialKernel(_rungs, source);
        kernel.OpenCircuit(_volts);
        if (!Newton.TryDescend(kernel, new LoadShares(scaled, _rowOf, _parents.Length), _volts, ref iterations))
        {
            Array.Clear(deviceVolts, 0, deviceVolts.Length);
            return false;
        }

        Array.Copy(_volts, _firstDevice, deviceVolts, 0, deviceVolts.Length);
        return true;
    }
}
