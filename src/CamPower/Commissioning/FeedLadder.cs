using CamPower.Assessment;
using CamPower.Circuits;

namespace CamPower.Commissioning;

/// <summary>The ladder of a feed with faults in it: the output behind its protective device, the ends of its runs with what leaks there,
/// and its devices, unless they are unplugged.</summary>
internal sealed class FeedLadder
{
    private readonly Rung[] _rungs;

    internal FeedLadder(FeedModel feed, FeedFaults faults, double[] runOhms, double protectionOhms, bool withDevices)
    {
        int firstDevice = 1 + feed.Runs, nodes = firstDevice + (withDevices ? feed.Devices : 0);
        _rungs = new Rung[nodes];
        Rows = new LoadRow[nodes];
        Volts = new double[nodes];
        _rungs[0] = new Rung(-1, protectionOhms);
        for (int run = 0; run < feed.Runs; run++)
        {
            _rungs[1 + run] = new Rung(1 + feed.Feed.Parents[run], runOhms[run]);
            if (double.IsInfinity(faults.LeakOhms[run]) || feed.IsCut(faults, run)) continue;
            Rows[1 + run].Siemens = 1 / faults.LeakOhms[run];
            Leaks = true;
        }

        for (int node = firstDevice; node < nodes; node++)
        {
            int device = node - firstDevice;
            _rungs[node] = new Rung(1 + feed.Feed.Devices[device].RunIndex, feed.SharedReturnOhms[device]);
        }
    }

    /// <summary>What each node draws.</summary>
    internal LoadRow[] Rows { get; }

    /// <summary>The voltage of each node as it was solved last. [V]</summary>
    internal double[] Volts { get; }

    /// <summary>Whether anything leaks between the conductors.</summary>
    internal bool Leaks { get; }

    internal bool TrySolve(double sourceVolts)
    {
        var kernel = new RadialKernel(_rungs, sourceVolts);
        kernel.OpenCircuit(Volts);
        int iterations = 0;
        return Newton.TryDescend(kernel, new LoadShares(Rows), Volts, ref iterations);
    }

    /// <summary>The current of the output. [A]</summary>
    internal double Amperes()
    {
        double sum = 0;
        for (int node = 0; node < Rows.Length; node++)
        {
            if (Volts[node] > 0) sum += Rows[node].AmperesAt(Volts[node]);
        }

        return sum;
    }
}
