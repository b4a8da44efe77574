using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>One output with all that hangs on it, solved in every condition.</summary>
internal sealed class SolvedFeed
{
    private SolvedFeed(OutputFeed feed, DeviceAssessment[] devices, OutputAssessment output, double[] amperesAtRest)
    {
        Feed = feed;
        Devices = devices;
        Output = output;
        AmperesAtRest = amperesAtRest;
    }

    internal OutputFeed Feed { get; }

    /// <summary>The devices, in the feed's order.</summary>
    internal DeviceAssessment[] Devices { get; }

    internal OutputAssessment Output { get; }

    /// <summary>For each condition the current with every motor at rest. [A]</summary>
    internal double[] AmperesAtRest { get; }

    internal static SolvedFeed Of(OutputFeed feed, IReadOnlyList<Condition> conditions, double coldestCelsius)
    {
        var devices = new DeviceInCondition[conditions.Count][];
        var outputs = new OutputInCondition[conditions.Count];
        var atRest = new double[conditions.Count];
        for (int c = 0; c < conditions.Count; c++)
        {
            Condition condition = conditions[c];
            var circuit = new FeedCircuit(feed, condition.At.CableCelsius);
            Load[] loads = FeedSolver.LoadsIn(condition, feed, motorsMove: condition.MotorsMoving != 0);
            double[] solved = Solved(circuit, feed, loads);
            devices[c] = FeedSolver.DevicesIn(condition, feed, circuit, loads, solved);
            outputs[c] = FeedSolver.OutputIn(condition, feed, circuit, loads, solved);
            atRest[c] = condition.MotorsMoving is null || !feed.HasMotor ? outputs[c].Amperes : AtRest(condition, feed, circuit);
        }

        double[] lightLoad = FeedSolver.LightLoadVolts(feed, new FeedCircuit(feed, coldestCelsius));
        var assessed = feed.Devices.Select((fed, i) => new DeviceAssessment(fed.Device, feed.Box, feed.Output, feed.PathTo(i), lightLoad[i],
            Array.ConvertAll(devices, inCondition => inCondition[i]))).ToArray();
        return new SolvedFeed(feed, assessed, new OutputAssessment(feed.Box, feed.Output, feed.DevicesFed, outputs), atRest);
    }

    private static double[] Solved(FeedCircuit circuit, OutputFeed feed, Load[] loads)
    {
        var volts = new double[loads.Length];
        circuit.TrySolve(feed.Box.Supply.LowestVolts, loads, volts);
        return volts;
    }

    private static double AtRest(Condition condition, OutputFeed feed, FeedCircuit circuit)
    {
        Load[] loads = FeedSolver.LoadsIn(condition, feed, motorsMove: false);
        return FeedSolver.OutputIn(condition, feed, circuit, loads, Solved(circuit, feed, loads)).Amperes;
    }
}
