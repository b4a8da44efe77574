using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>Solves the circuit behind a group of outputs in one condition.</summary>
internal static class FeedSolver
{
    /// <summary>Fills in what becomes of each device of a group in a condition, behind the supply of its box.</summary>
    /// <param name="group">The group in the condition.</param>
    /// <param name="condition">The place of the condition in its list.</param>
    /// <param name="rails">The rail of each box in each condition.</param>
    /// <param name="results">For each device of the group its answer in each condition.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    internal static void Solve(GroupInCondition group, int condition, Dictionary<DistributionBox, BoxRail[]> rails,
        DeviceInCondition[][] results, CancellationToken cancellationToken)
    {
        (FeedCircuit circuit, RailVolts rail, Load[] loads, double[] solved) = (group.Circuit, group.Lowest, group.Loads, group.Solved);
        IReadOnlyList<FedDevice> devices = circuit.Group.Devices;
        var unloaded = new double[loads.Length];
        var verdicts = new StartVerdict[loads.Length];
        for (int i = 0; i < loads.Length; i++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            unloaded[i] = circuit.UnloadedVolts(i, rail, loads);
            verdicts[i] = devices[i].Starting is Starting starting
                ? StartKernel.Judge(unloaded[i], solved[i], starting, StartKernel.NeedsNoClimb(solved[i], starting)
                    || circuit.CanClimbFrom(starting.TurnOnVolts, i, rail, loads))
                : StartVerdict.Unknown;
        }

        bool fromOff = group.Condition.On.HasFlag(LoadComponents.StartUp);
        OnOffSequence? sequence = AllUp(devices, solved, verdicts, fromOff)
            ? null
            : new OnOffSequence(circuit, rail, loads, fromOff, cancellationToken);
        for (int i = 0; i < results.Length; i++)
        {
            DeviceState state = devices[i].Accepted is null ? DeviceState.WrongCurrent : sequence?.States[i] ?? DeviceState.Up;
            BoxRail box = rails[devices[i].Box][condition];
            var alone = new DeviceInCondition(group, i, box, state, verdicts[i], sequence?.Volts[i] ?? solved[i], unloaded[i]);
            if (group.BankOf(devices[i].Box)?.Reading(devices[i]) is AcInCondition ac) alone = alone.OnAlternating(ac);
            results[i][condition] = box.With(alone, devices[i]);
        }
    }

    /// <summary>The load of each device in a condition, with so many motors of each output moving: those that add most.</summary>
    internal static Load[] LoadsIn(Condition condition, FeedGroup group, int motorsOfAnOutput)
    {
        if (motorsOfAnOutput == 0) return AtRest(condition, group);
        Load[] loads = LoadsOf(group, condition, condition.On);
        if (!group.HasMotor) return loads;
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
        if (coldest.TrySolve(highest, LightestLoads(coldest.Group), volts)) return volts;
        for (int i = 0; i < volts.Length; i++) volts[i] = highest.Of(coldest.Group.Devices[i].Box);
        return volts;
    }

    /// <summary>The least load known of each device.</summary>
    internal static Load[] LightestLoads(FeedGroup group) => LoadsOf(group, condition: null, LoadComponents.None);

    private static Load[] AtRest(Condition condition, FeedGroup group) =>
        LoadsOf(group, condition, condition.On & ~LoadComponents.Motor);

    private static void LeaveAtRest(OutputFeed feed, int first, int moving, Load[] loads, Load[] atRest)
    {
        double volts = feed.Box.Supply.Output.LowestVolts;
        IEnumerable<int> standing = Enumerable.Range(first, feed.Devices.Count)
            .OrderByDescending(i => loads[i].AmperesAt(volts) - atRest[i].AmperesAt(volts)).Skip(moving);
        foreach (int i in standing) loads[i] = atRest[i];
    }

    // With those shares in a condition, or the least known. What is fed the wrong kind of current draws nothing.
    private static Load[] LoadsOf(FeedGroup group, Condition? condition, LoadComponents on)
    {
        var loads = new Load[group.Devices.Count];
        for (int i = 0; i < loads.Length; i++)
        {
            FedDevice device = group.Devices[i];
            Draw draw = device.Device.Model.Draw;
            loads[i] = device.Accepted is null ? Load.None : condition is null ? draw.Lightest : draw.LoadIn(condition, on);
        }

        return loads;
    }

    // Everything balances above every drop-out voltage and, where all begin off, everything starts.
    private static bool AllUp(IReadOnlyList<FedDevice> devices, double[] solved, StartVerdict[] verdicts, bool fromOff)
    {
        for (int i = 0; i < solved.Length; i++)
        {
            if (!(solved[i] > RunKernel.NoOperatingPoint)) return false;
            if (devices[i].Starting is not Starting starting) continue;
            if (solved[i] < starting.DropOutVolts || (fromOff && verdicts[i] != StartVerdict.Starts)) return false;
        }

        return true;
    }
}
