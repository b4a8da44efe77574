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

    // A supply without tolerance still has one, so that it divides by something. [V]
    private const double LeastVolts = 1e-3;

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
        double[] x = parts.Expected;
        return [OfTemperature(), .. OfReels(), OfSupply(), .. OfRuns(), .. OfDraws(), .. OfProtection()];

        Direction OfTemperature() => new(expected.WithRuns(Moved(parts.Temperature)), common: CommonParts.Temperature);

        IEnumerable<Direction> OfReels() => common.Reels.Select(reel => (Added: Moved(reel.Key), Place: reel.Value))
            .Where(reel => reel.Added.Any(ohms => ohms != 0))
            .Select(reel => new Direction(expected.WithRuns(reel.Added), common: reel.Place));

        Direction OfSupply() => new(expected, common: CommonParts.SupplyOf(box),
            supplyVolts: Math.Max(feed.Box.Supply.Output.SetVolts * SigmaOf(parts, parts.SupplyOf(feed.Box)), LeastVolts));

        IEnumerable<Direction> OfRuns() => feed.Runs.Select((placed, run) =>
        {
            double length = Moved(parts.LengthOf(placed))[run];
            int joints = parts.JointsOf(placed);
            double joint = joints == UncertainParts.None ? 0 : Moved(joints)[run];
            return new Direction(expected.WithRun(run, Math.Sqrt((length * length) + (joint * joint))));
        });

        IEnumerable<Direction> OfDraws() => feed.Devices.Select((fed, device) =>
            new Direction(expected.WithDraw(device, SigmaOf(parts, parts.DrawOf(fed.Device))), isDraw: true));

        IEnumerable<Direction> OfProtection()
        {
            int protection = parts.ProtectionOf(feed.Box, feed.Output);
            if (protection == UncertainParts.None) yield break;
            yield return new Direction(expected.WithProtection(Protection(feed, parts, SigmaOf(parts, protection))));
        }

        // What a part that is off by its standard deviation adds to each run.
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
