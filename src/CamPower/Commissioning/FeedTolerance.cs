using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using CamPower.Tolerance;

namespace CamPower.Commissioning;

/// <summary>The numbers of a feed as expected, and each moved by its standard deviation.</summary>
internal static class FeedTolerance
{
    /// <summary>How much wider than stated tolerances are taken, so that a site that is a little off is not accused. Common practice, no
    /// source.</summary>
    internal const double Widening = 1.3;

    /// <summary>How far the voltage of a supply moves from one reading to the next, with load, line and warmth, over itself: standard
    /// deviation. Common practice, no source; data sheets state 0.5 % to 1 % of regulation.</summary>
    internal const double SupplyDrift = 0.0025;

    /// <summary>How far the draw with infrared is off by itself, over how far any draw is off. Common practice, no source.</summary>
    internal const double InfraredShare = 0.4;

    internal static FeedNumbers Expected(OutputFeed feed, UncertainParts parts, double celsius)
    {
        double[] x = parts.Expected;
        double warmer = celsius + x[parts.Temperature];
        return new FeedNumbers(
            [.. feed.Runs.Select(r => Ohms(r, parts, x, warmer))],
            [.. feed.Devices.Select(d => 1 + x[parts.DrawOf(d.Device)])],
            Protection(feed, parts, 0));
    }

    internal static IReadOnlyList<Direction> Directions(OutputFeed feed, UncertainParts parts, FeedNumbers expected, double celsius,
        CommonParts common, int box)
    {
        var directions = new List<Direction>();
        double[] x = parts.Expected;
        double warmer = celsius + x[parts.Temperature];
        directions.Add(new Direction(expected.WithRuns(Moved(parts.Temperature)), 0, CommonParts.Temperature));
        foreach (KeyValuePair<int, int> reel in common.Reels)
        {
            double[] moved = Moved(reel.Key);
            if (moved.Any(m => m != 0)) directions.Add(new Direction(expected.WithRuns(moved), 0, reel.Value));
        }

        double volts = feed.Box.Supply.Output.SetVolts * SigmaOf(parts, parts.SupplyOf(feed.Box));
        directions.Add(new Direction(expected, Math.Max(volts, 1e-3), CommonParts.SupplyOf(box)));
        for (int run = 0; run < feed.Runs.Count; run++)
        {
            double length = Moved(parts.LengthOf(feed.Runs[run]))[run];
            int joints = parts.JointsOf(feed.Runs[run]);
            double joint = joints == UncertainParts.None ? 0 : Moved(joints)[run];
            directions.Add(new Direction(expected.WithRun(run, Math.Sqrt((length * length) + (joint * joint))), 0, -1));
        }

        for (int device = 0; device < feed.Devices.Count; device++)
        {
            double sigma = SigmaOf(parts, parts.DrawOf(feed.Devices[device].Device));
            directions.Add(new Direction(expected.WithDraw(device, sigma), 0, -1, isDraw: true));
        }

        int protection = parts.ProtectionOf(feed.Box, feed.Output);
        if (protection != UncertainParts.None)
        {
            directions.Add(new Direction(expected.WithProtection(Protection(feed, parts, SigmaOf(parts, protection))), 0, -1));
        }

        return directions;

        double[] Moved(int part)
        {
            var moved = (double[])x.Clone();
            moved[part] += SigmaOf(parts, part);
            double at = celsius + moved[parts.Temperature];
            return [.. feed.Runs.Select((r, i) => Ohms(r, parts, moved, at) - expected.RunOhms[i])];
        }
    }

    private static double SigmaOf(UncertainParts parts, int part) => Widening * parts.All[part].Range.StandardDeviation;

    private static double Protection(OutputFeed feed, UncertainParts parts, double moved)
    {
        if (feed.Output.Protection is not ProtectiveDevice device) return 0;
        int part = parts.ProtectionOf(feed.Box, feed.Output);
        double share = part == UncertainParts.None ? 0 : parts.Expected[part] + moved;
        return device.LeastOhms + (share * (device.GreatestOhms - device.LeastOhms));
    }

    private static double Ohms(SiteRun run, UncertainParts parts, double[] x, double celsius)
    {
        int joints = parts.JointsOf(run);
        double length = 1 + x[parts.LengthOf(run)], sum = 0;
        foreach (RunPart part in run.Run.Parts)
        {
            double ohms = run.ReturnAt is null ? part.OhmsAt(celsius) : part.OutgoingOhmsAt(celsius);
            sum += part is CableSegment segment
                ? ohms * length * (1 + x[parts.ReelOf(segment.Cable)])
                : ohms * (joints == UncertainParts.None ? 1 : 1 + x[joints]);
        }

        return sum;
    }
}
