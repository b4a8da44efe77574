using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>A group of outputs with all that hangs on them, solved in every condition.</summary>
internal sealed class SolvedGroup
{
    private readonly FeedGroup _group;
    private readonly IReadOnlyList<Condition> _conditions;
    private readonly DeviceInCondition[][] _devices;
    private readonly ShieldInCondition[][] _shields;
    private readonly OutputInCondition[][] _outputs;
    private readonly double[][] _atRest;

    internal SolvedGroup(FeedGroup group, IReadOnlyList<Condition> conditions, double coldestCelsius, CancellationToken cancellationToken = default)
    {
        _group = group;
        _conditions = conditions;
        _devices = new DeviceInCondition[conditions.Count][];
        _shields = new ShieldInCondition[conditions.Count][];
        _outputs = [.. group.Feeds.Select(_ => new OutputInCondition[conditions.Count])];
        _atRest = [.. group.Feeds.Select(_ => new double[conditions.Count])];
        for (int c = 0; c < conditions.Count; c++) Solve(c, cancellationToken);

        double[] lightLoad = FeedSolver.LightLoadVolts(FeedCircuit.Of(group, coldestCelsius));
        Devices = [.. AssessDevices(lightLoad)];
        Outputs = [.. group.Feeds.Select((feed, f) => new SolvedOutput(feed, _outputs[f], _atRest[f]))];
        Shields = [.. group.Links.Select((link, l) => new ShieldAssessment(link, Array.ConvertAll(_shields, inCondition => inCondition[l])))];
    }

    /// <summary>The devices, in the group's order.</summary>
    internal DeviceAssessment[] Devices { get; }

    /// <summary>The outputs, in the group's order.</summary>
    internal SolvedOutput[] Outputs { get; }

    /// <summary>The shields, in the group's order.</summary>
    internal ShieldAssessment[] Shields { get; }

    private void Solve(int c, CancellationToken cancellationToken)
    {
        Condition condition = _conditions[c];
        var circuit = FeedCircuit.Of(_group, condition.At.CableCelsius);
        Load[] loads = FeedSolver.LoadsIn(condition, _group, condition.MotorsMoving == 0 ? 0 : int.MaxValue);
        double[] solved = FeedSolver.Solved(circuit, SupplyLevel.Lowest, loads);
        _devices[c] = FeedSolver.DevicesIn(condition, circuit, loads, solved, cancellationToken);
        _shields[c] = circuit is MeshedCircuit meshed ? ShieldSolver.ShieldsIn(condition, meshed, _devices[c]) : [];
        int? limit = _group.HasMotor ? condition.MotorsMoving : null;
        OutputCurrents currents = limit is int most ? With(most, condition, circuit) : new OutputCurrents(circuit, loads, solved);
        OutputCurrents atRest = limit is null ? currents : With(0, condition, circuit);
        int first = 0;
        for (int f = 0; f < _group.Feeds.Count; f++)
        {
            OutputFeed feed = _group.Feeds[f];
            _outputs[f][c] = new OutputInCondition(condition, currents.Of(feed, first), currents.AreDemandOnly);
            _atRest[f][c] = atRest.Of(feed, first);
            first += feed.Devices.Count;
        }
    }

    private OutputCurrents With(int motorsOfAnOutput, Condition condition, FeedCircuit circuit)
    {
        Load[] loads = FeedSolver.LoadsIn(condition, _group, motorsOfAnOutput);
        return new OutputCurrents(circuit, loads, FeedSolver.Solved(circuit, SupplyLevel.Lowest, loads));
    }

    private IEnumerable<DeviceAssessment> AssessDevices(double[] lightLoad)
    {
        int i = 0;
        foreach (OutputFeed feed in _group.Feeds)
        {
            foreach (FedDevice fed in feed.Devices)
            {
                int index = i++;
                yield return new DeviceAssessment(fed.Device, feed.Box, feed.Output, fed.Path, lightLoad[index],
                    Array.ConvertAll(_devices, inCondition => inCondition[index]));
            }
        }
    }
}
