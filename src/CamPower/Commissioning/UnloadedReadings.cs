using System;

namespace CamPower.Commissioning;

/// <summary>What a feed with faults in it reads while no device draws: dead, and live with every device unplugged.</summary>
/// <param name="feed">The feed.</param>
/// <param name="faults">The faults.</param>
/// <param name="ohms">Loop resistance of each run with them. [Ω]</param>
internal sealed class UnloadedReadings(FeedModel feed, FeedFaults faults, double[] ohms)
{
    // The least that what leaks is beside, so that a leak at the very place that is joined divides by something. [Ω]
    private const double LeastBeside = 1e-9;

    /// <summary>Loops with the conductors joined at their ends, and what is between the conductors with nothing joined.</summary>
    internal void PredictDead(double[] values)
    {
        double leak = 0;
        for (int run = 0; run < feed.Runs; run++)
        {
            if (Leaks(run)) leak += 1 / LeakingOhms(run);
        }

        values[feed.OutputPoint(UnitPoints.Insulation)] = leak > 0 ? Math.Min(1 / leak, FeedFaults.OpenOhms) : FeedFaults.OpenOhms;
        for (int device = 0; device < feed.Devices; device++)
        {
            values[FeedModel.PointOf(device, UnitPoints.Loop)] = Loop(feed.Feed.Devices[device].RunIndex, feed.SharedReturnOhms[device]);
        }

        for (int bare = 0; bare < feed.Bare.Length; bare++)
        {
            values[feed.PointAt(bare, UnitPoints.Loop)] = Loop(feed.Bare[bare], 0);
        }
    }

    /// <summary>Voltages with every device of the output unplugged: only what leaks draws.</summary>
    internal void PredictUnplugged(double[] values, double sourceVolts, double protectionOhms)
    {
        var ladder = new FeedLadder(feed, faults, ohms, protectionOhms, withDevices: false);
        double[] volts = ladder.Volts;
        if (!ladder.Leaks || !(sourceVolts > 0) || !ladder.TrySolve(sourceVolts))
        {
            for (int node = 0; node < volts.Length; node++) volts[node] = sourceVolts;
        }

        values[feed.OutputPoint(UnitPoints.OutputUnplugged)] = volts[0];
        for (int device = 0; device < feed.Devices; device++)
        {
            double at = VoltsAt(feed.Feed.Devices[device].RunIndex);
            values[FeedModel.PointOf(device, UnitPoints.Plug)] = faults.IsReversed[device] ? -at : at;
        }

        for (int bare = 0; bare < feed.Bare.Length; bare++) values[feed.PointAt(bare, UnitPoints.Plug)] = VoltsAt(feed.Bare[bare]);

        double VoltsAt(int end) => feed.IsCut(faults, end) ? 0 : volts[1 + end];
    }

    private bool Leaks(int run) => !double.IsInfinity(faults.LeakOhms[run]) && !feed.IsCut(faults, run);

    private double LeakingOhms(int run) => faults.LeakOhms[run] + feed.PathOhms(ohms, run);

    // The conductors joined at the end of a run, and what leaks beside that.
    private double Loop(int end, double sharedReturn)
    {
        if (feed.IsCut(faults, end)) return FeedFaults.OpenOhms;
        double loop = feed.PathOhms(ohms, end) + sharedReturn;
        for (int run = 0; run < feed.Runs; run++)
        {
            if (!Leaks(run)) continue;
            double common = CommonOhms(run, end), beside = Math.Max(loop - common, LeastBeside), leaking = LeakingOhms(run) - common;
            loop = common + (beside * leaking / (beside + leaking));
        }

        return loop;
    }

    private double CommonOhms(int one, int other)
    {
        double sum = 0;
        for (int run = one; run >= 0; run = feed.Feed.Parents[run])
        {
            for (int at = other; at >= 0; at = feed.Feed.Parents[at])
            {
                if (at == run) sum += ohms[run];
            }
        }

        return sum;
    }
}
