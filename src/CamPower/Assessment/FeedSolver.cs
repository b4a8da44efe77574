using System;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>What one output feeds, solved in one condition.</summary>
internal static class FeedSolver
{
    /// <summary>Every device of the feed in a condition, fed from the lowest voltage of the supply; solved is that of each with everything on, 0 without an operating point.</summary>
    internal static DeviceInCondition[] DevicesIn(Condition condition, OutputFeed feed, FeedCircuit circuit, Load[] loads, double[] solved)
    {
        double sourceVolts = feed.Box.Supply.LowestVolts;
        Starting?[] startings = StartingsOf(feed);
        var unloaded = new double[loads.Length];
        var verdicts = new StartVerdict[loads.Length];
        for (int i = 0; i < loads.Length; i++)
        {
            unloaded[i] = circuit.IsSingle ? sourceVolts : circuit.VoltsWith(i, Load.None, sourceVolts, loads);
            verdicts[i] = Verdict(i, startings[i], circuit, loads, sourceVolts, unloaded[i], solved[i]);
        }

        bool fromOff = condition.On.HasFlag(DrawShares.StartUp);
        OnOffSequence? sequence = AllUp(startings, solved, verdicts, fromOff) ? null : new OnOffSequence(circuit, feed, startings, loads, sourceVolts, fromOff);
        var results = new DeviceInCondition[loads.Length];
        for (int i = 0; i < results.Length; i++)
        {
            SiteDevice device = feed.Devices[i].Device;
            VoltageRange? accepted = device.Model.InputFor(feed.Box.Supply.Output);
            DeviceState state = accepted is null ? DeviceState.WrongCurrent : sequence?.States[i] ?? DeviceState.Up;
            results[i] = new DeviceInCondition(device, condition, loads[i], state, verdicts[i], sequence?.Volts[i] ?? solved[i], solved[i], unloaded[i], accepted);
        }

        return results;
    }

    /// <summary>The current of the output with everything on: the larger of those at the lowest supply voltage, where solved is that of each device, and at the highest.</summary>
    internal static OutputInCondition OutputIn(Condition condition, OutputFeed feed, FeedCircuit circuit, Load[] loads, double[] solved)
    {
        Supply supply = feed.Box.Supply;
        bool isLowerBound = Array.Exists(solved, volts => !(volts > RunKernel.NoOperatingPoint));
        double amperes = TotalAmperes(loads, solved, supply.LowestVolts);

        // Only a resistance draws more at the higher voltage.
        if (Array.Exists(loads, load => load.Siemens > 0))
        {
            var atHighest = new double[loads.Length];
            circuit.TrySolve(supply.HighestVolts, loads, atHighest);
            amperes = Math.Max(amperes, TotalAmperes(loads, atHighest, supply.HighestVolts));
        }

        return new OutputInCondition(condition, amperes, isLowerBound);
    }

    /// <summary>The load of each device in a condition; none where the supply gives the wrong kind of current.</summary>
    internal static Load[] LoadsIn(Condition condition, OutputFeed feed, bool motorsMove)
    {
        DrawShares shares = motorsMove ? condition.On : condition.On & ~DrawShares.Motor;
        return LoadsOf(feed, draw => draw.LoadWith(shares));
    }

    /// <summary>The most that each device may see: highest supply voltage and the least load known. [V]</summary>
    internal static double[] LightLoadVolts(OutputFeed feed, FeedCircuit coldest)
    {
        var volts = new double[feed.Devices.Count];
        double highest = feed.Box.Supply.HighestVolts;
        bool solved = coldest.TrySolve(highest, LoadsOf(feed, draw => draw.Lightest), volts);
        return solved ? volts : Array.ConvertAll(volts, _ => highest);
    }

    // Nothing is worked out for a device that is fed the wrong kind of current: it neither draws nor starts.
    private static Starting?[] StartingsOf(OutputFeed feed)
    {
        var startings = new Starting?[feed.Devices.Count];
        for (int i = 0; i < startings.Length; i++)
        {
            Device model = feed.Devices[i].Device.Model;
            startings[i] = model.InputFor(feed.Box.Supply.Output) is null ? null : model.Starting;
        }

        return startings;
    }

    private static Load[] LoadsOf(OutputFeed feed, Func<Draw, Load> load)
    {
        var loads = new Load[feed.Devices.Count];
        for (int i = 0; i < loads.Length; i++)
        {
            Device model = feed.Devices[i].Device.Model;
            loads[i] = model.InputFor(feed.Box.Supply.Output) is null ? Load.None : load(model.Draw);
        }

        return loads;
    }

    // Without an operating point the loads pull the voltage down, and draw at least what they would at the source.
    private static double TotalAmperes(Load[] loads, double[] volts, double sourceVolts)
    {
        double amperes = 0;
        for (int i = 0; i < loads.Length; i++) amperes += loads[i].AmperesAt(volts[i] > RunKernel.NoOperatingPoint ? volts[i] : sourceVolts);
        return amperes;
    }

    private static StartVerdict Verdict(int device, Starting? starting, FeedCircuit circuit, Load[] loads, double sourceVolts,
        double unloaded, double settled)
    {
        if (starting is null) return StartVerdict.Unknown;
        if (circuit.IsSingle) return StartKernel.Judge(sourceVolts, circuit.OhmsTo(device), loads[device], settled, starting);
        if (settled < starting.DropOutVolts) return unloaded > 0 && unloaded < starting.TurnOnVolts ? StartVerdict.UnloadedBelowTurnOn : StartVerdict.SettlesBelowDropOut;
        if (unloaded < starting.TurnOnVolts) return StartVerdict.UnloadedBelowTurnOn;

        bool climbs = starting.SoftStart == SoftStart.Yes || settled <= starting.TurnOnVolts
            || circuit.CanClimbFrom(starting.TurnOnVolts, device, sourceVolts, loads);
        return climbs ? StartVerdict.Starts : StartVerdict.TurnOnBelowUnstableVoltage;
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
