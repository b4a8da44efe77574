using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>What a group of outputs feeds, solved in one condition.</summary>
internal static class FeedSolver
{
    /// <summary>Every device of a group in a condition, behind the supply of its box.</summary>
    internal static DeviceInCondition[] DevicesIn(
        GroupInCondition group, Func<FedDevice, BoxRail> railOf, CancellationToken cancellationToken)
    {
        (FeedCircuit circuit, RailVolts rail, Load[] loads, double[] solved) = (group.Circuit, group.Lowest, group.Loads, group.Solved);
        IReadOnlyList<FedDevice> devices = circuit.Group.Devices;
        Starting?[] startings = StartingsOf(devices);
        var unloaded = new double[loads.Length];
        var verdicts = new StartVerdict[loads.Length];
        for (int i = 0; i < loads.Length; i++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            unloaded[i] = circuit.UnloadedVolts(i, rail, loads);
            verdicts[i] = startings[i] is Starting starting
                ? StartKernel.Judge(unloaded[i], solved[i], starting, StartKernel.NeedsNoClimb(solved[i], starting)
                    || circuit.CanClimbFrom(starting.TurnOnVolts, i, rail, loads))
                : StartVerdict.Unknown;
        }

        bool fromOff = group.Condition.On.HasFlag(LoadComponents.StartUp);
        OnOffSequence? sequence = AllUp(startings, solved, verdicts, fromOff)
            ? null
            : new OnOffSequence(circuit, rail, startings, loads, fromOff, cancellationToken);
        var results = new DeviceInCondition[loads.Length];
        for (int i = 0; i < results.Length; i++)
        {
            DeviceState state = devices[i].Accepted is null ? DeviceState.WrongCurrent : sequence?.States[i] ?? DeviceState.Up;
            (BoxRail box, FedDevice device) = (railOf(devices[i]), devices[i]);
            var alone = new DeviceInCondition(
                circuit, rail, i, group.Condition, loads, state, verdicts[i], sequence?.Volts[i] ?? solved[i], solved[i], unloaded[i],
                () => box.DuringInrush(device));
            results[i] = box.With(alone, device);
        }

        return results;
    }

    /// <summary>The load of each device in a condition, with so many motors of each output moving: those that add most.</summary>
    internal static Load[] LoadsIn(Condition condition, FeedGroup group, int motorsOfAnOutput)
    {
        if (motorsOfAnOutput == 0) return AtRest(condition, group);
        Load[] loads = LoadsOf(group, draw => draw.LoadWith(condition.On));
        if (group.Feeds.All(feed => feed.Motors <= motorsOfAnOutput)) return loads;
        Load[] atRest = AtRest(condition, group);
        int first = 0;
        foreach (OutputFeed feed in group.Feeds)
        {
            if (feed.Motors > motorsOfAnOutput) LeaveAtRest(feed, first, motorsOfAnOutput, loads, atRest);
            first += feed.Devices.Count;
        }

        return loads;
    }

    /// <summary>The voltage of each device with everything on, 0 for all without an operating point. [V]</summary>
    internal static double[] Solved(FeedCircuit circuit, RailVolts rail, Load[] loads)
    {
        var volts = new double[loads.Length];
        circuit.TrySolve(rail, loads, volts);
        return volts;
    }

    /// <summary>The most that each device may see: highest supply voltage and the least load known. [V]</summary>
    internal static double[] LightLoadVolts(FeedCircuit coldest, RailVolts highest)
    {
        var volts = new double[coldest.Group.Devices.Count];
        if (coldest.TrySolve(highest, LoadsOf(coldest.Group, draw => draw.Lightest), volts)) return volts;
        for (int i = 0; i < volts.Length; i++) volts[i] = highest.Of(coldest.Group.Devices[i].Box);
        return volts;
    }

    // Nothing is worked out for a device that is fed the wrong kind of current: it neither draws nor starts.
    private static Starting?[] StartingsOf(IReadOnlyList<FedDevice> devices)
    {
        var startings = new Starting?[devices.Count];
        for (int i = 0; i < startings.Length; i++) startings[i] = devices[i].Accepted is null ? null : devices[i].Device.Model.Starting;
        return startings;
    }

    private static Load[] AtRest(Condition condition, FeedGroup group) =>
        LoadsOf(group, draw => draw.LoadWith(condition.On & ~LoadComponents.Motor));

    private static void LeaveAtRest(OutputFeed feed, int first, int moving, Load[] loads, Load[] atRest)
    {
        double volts = feed.Box.Supply.Output.LowestVolts;
        IEnumerable<int> standing = Enumerable.Range(first, feed.Devices.Count)
            .OrderByDescending(i => loads[i].AmperesAt(volts) - atRest[i].AmperesAt(volts)).Skip(moving);
        foreach (int i in standing) loads[i] = atRest[i];
    }

    private static Load[] LoadsOf(FeedGroup group, Func<Draw, Load> load)
    {
        var loads = new Load[group.Devices.Count];
        for (int i = 0; i < loads.Length; i++)
        {
            loads[i] = group.Devices[i].Accepted is null ? Load.None : load(group.Devices[i].Device.Model.Draw);
        }

        return loads;
    }

    // Everything balances above every drop-out voltage and, where all begin off, everything starts.
    private static bool AllUp(Starting?[] startings, double[] solved, StartVerdict[] verdicts, bool fromOff)
    {
        for (int i = 0; i < solved.Length; i++)
        {
            if (!(solved[i] > RunKernel.NoOperatingPoint)) return false;
            if (startings[i] is not Starting starting) continue;
            if (solved[i] < starting.DropOutVolts || (fromOff && verdicts[i] != StartVerdict.Starts)) return false;
        }

        return true;
    }
}
