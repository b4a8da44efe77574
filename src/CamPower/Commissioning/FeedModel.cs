using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>What one output feeds, as a tree of loops in which faults can be put: what every point of the sheet would read. SI
/// doubles.</summary>
/// <remarks>
/// The same ladder reduction as everywhere (<see cref="RadialKernel"/>). Where returns are shared or divide through shields, a voltage
/// found once by the network of both poles corrects the tree: what a fault changes elsewhere through them is left out.
/// </remarks>
internal sealed class FeedModel
{
    private const double DropOutShare = 0.7;

    private readonly int[] _parents;
    private readonly int _firstDevice;
    private readonly double[] _sharedReturnOhms, _returnShare, _dayOffset, _nightOffset;
    private readonly LoadRow[] _day, _night, _otherDay, _otherNight;
    private readonly bool[] _draws;

    internal FeedModel(OutputFeed feed, FeedGroup group, int unit, int box, FeedNumbers expected, SupplyVolts supply, Condition day,
        Condition night, IReadOnlyList<Device> models, Func<FedDevice, double> expectedDraw)
    {
        Feed = feed;
        Unit = unit;
        Box = box;
        Expected = expected;
        Runs = feed.Runs.Count;
        Devices = feed.Devices.Count;
        _firstDevice = 1 + Runs;
        _parents = [-1, .. feed.Parents.Select(run => 1 + run), .. feed.Devices.Select(d => 1 + d.RunIndex)];
        IsBehind = [.. feed.Runs.Select(run => feed.Devices.Select(d => d.Path.Contains(run)).ToArray())];
        Bare = group.SharesReturns
            ? []
            : [.. Enumerable.Range(0, Runs).Where(run => IsBehind[run].Any(b => b) && feed.Devices.All(d => d.RunIndex != run))];
        _draws = [.. feed.Devices.Select(d => d.Accepted is not null)];
        _day = [.. feed.Devices.Select(d => RowOf(d.Device.Model, day))];
        _night = [.. feed.Devices.Select(d => RowOf(d.Device.Model, night))];
        _otherDay = [.. models.Select(m => RowOf(m, day))];
        _otherNight = [.. models.Select(m => RowOf(m, night))];
        _sharedReturnOhms = new double[Devices];
        _dayOffset = new double[Devices];
        _nightOffset = new double[Devices];
        double celsius = day.At.CableCelsius;
        _returnShare = [.. feed.Runs.Select(r => r.ReturnAt is null ? r.Run.ReturnOhmsAt(celsius) / Math.Max(r.Run.OhmsAt(celsius),
            1e-12) : 0)];
        if (group.SharesReturns) Correct(group, day, night, supply, expectedDraw);
    }

    internal OutputFeed Feed { get; }

    /// <summary>Its place among the units.</summary>
    internal int Unit { get; }

    /// <summary>The place of its box among the units.</summary>
    internal int Box { get; }

    /// <summary>Its numbers as the site and its tolerances let expect them.</summary>
    internal FeedNumbers Expected { get; }

    internal int Runs { get; }

    internal int Devices { get; }

    internal int Points => ((Devices + Bare.Length) * UnitPoints.OfDevice) + UnitPoints.OfOutput;

    /// <summary>The runs at whose end no device is, but that lead to one: junctions that can be read too. None where returns are
    /// shared.</summary>
    internal int[] Bare { get; }

    /// <summary>For each run which devices hang on it.</summary>
    internal bool[][] IsBehind { get; }

    /// <summary>Loop resistance of a run of the site, without a return that is another run's. [Ω]</summary>
    internal static double OhmsOf(SiteRun run, double celsius) =>
        run.ReturnAt is null ? run.Run.OhmsAt(celsius) : run.Run.OutgoingOhmsAt(celsius);

    /// <summary>The point of a device, or of the output for -1.</summary>
    internal int PointOf(int device, int point) => device < 0 ? (Devices * UnitPoints.OfDevice) + point
        : (device * UnitPoints.OfDevice) + point;

    /// <summary>Whether a point is read with infrared on.</summary>
    internal bool IsByNight(int point) => UnitPoints.AtEnd(Devices, point) is int atEnd and >= 0
        ? atEnd == UnitPoints.Night
        : point - (Devices * UnitPoints.OfDevice) is UnitPoints.OutputNight or UnitPoints.AmperesNight;

    /// <summary>The point at a junction without a device.</summary>
    internal int PointAt(int bare, int point) => ((Devices + bare) * UnitPoints.OfDevice) + UnitPoints.OfOutput + point;

    /// <summary>The run that stands for a run and all in series with it that the readings do not part: that of most resistance.</summary>
    internal int StandIn(int run, SheetScope scope)
    {
        int first = run;
        while (Feed.Parents[first] is int before and >= 0 && IsInSeries(before, run) && !scope.IsRead(before)) first = before;
        int best = first, at = first;
        while (!scope.IsRead(at) && NextOf(at) is int next and >= 0)
        {
            at = next;
            if (Expected.RunOhms[at] > Expected.RunOhms[best]) best = at;
        }

        return best;
    }

    internal UnitPrediction Predict(IReadOnlyList<Deviation> deviations, SupplyVolts supply, FeedNumbers numbers, double otherAmperesDay,
        double otherAmperesNight)
    {
        FeedFaults faults = FeedFaults.Of(deviations, Unit, Runs, Devices);
        double[] ohms = new double[Runs];
        for (int run = 0; run < Runs; run++) ohms[run] = (numbers.RunOhms[run] * faults.RunFactor[run]) + faults.RunOhms[run];
        var prediction = new UnitPrediction(Points, Devices);
        PredictDead(prediction.Values, faults, ohms);
        double[] loaded = Loaded(faults, ohms, prediction.HasShieldCurrent);
        PredictUnplugged(prediction.Values, faults, ohms, faults.IsProtectionOpen ? 0 : supply.Unloaded, numbers);
        PredictLive(prediction, faults, loaded, supply.Day, numbers, isNight: false);
        PredictLive(prediction, faults, loaded, supply.Night, numbers, isNight: true);
        if (supply.IsLoose) Loosen(prediction);
        if (faults.AtOutput is not null) BeElsewhere(prediction.Values, otherAmperesDay, otherAmperesNight);
        return prediction;
    }

    // Of a load that draws the larger of two, the one that is the larger at the set point.
    private LoadRow RowOf(Device model, Condition condition)
    {
        Load load = model.Draw.LoadIn(condition, condition.On);
        if (!load.IsLargerOf) return new LoadRow { Watts = load.Watts, Amperes = load.Amperes, Siemens = load.Siemens };
        return load.Watts > load.Amperes * Feed.Box.Supply.Output.SetVolts
            ? new LoadRow { Watts = load.Watts }
            : new LoadRow { Amperes = load.Amperes };
    }

    private static LoadRow Scaled(in LoadRow row, double by) =>
        new() { Watts = row.Watts * by, Amperes = row.Amperes * by, Siemens = row.Siemens * by };

    // A shield beside the return conductor of the last run takes its part of the current.
    private double[] Loaded(FeedFaults faults, double[] ohms, bool[] hasShieldCurrent)
    {
        var loaded = (double[])ohms.Clone();
        for (int device = 0; device < Devices; device++)
        {
            double shield = faults.ShieldOhms[device];
            if (double.IsInfinity(shield)) continue;
            hasShieldCurrent[device] = true;
            for (int run = 0; run < Runs; run++)
            {
                if (!IsBehind[run][device]) continue;
                double back = ohms[run] * _returnShare[run], whole = PathReturn(ohms, device);
                if (whole > 0) loaded[run] -= back * whole / (whole + shield);
            }
        }

        return loaded;
    }

    private double PathReturn(double[] ohms, int device)
    {
        double sum = 0;
        for (int run = 0; run < Runs; run++) sum += IsBehind[run][device] ? ohms[run] * _returnShare[run] : 0;
        return sum;
    }

    private void PredictDead(double[] values, FeedFaults faults, double[] ohms)
    {
        double leak = 0;
        for (int run = 0; run < Runs; run++)
        {
            if (!double.IsInfinity(faults.LeakOhms[run])) leak += IsCut(faults, run) ? 0 : 1 / (faults.LeakOhms[run] + PathOhms(ohms, run));
        }

        values[PointOf(-1, UnitPoints.Insulation)] = leak > 0 ? Math.Min(1 / leak, FeedFaults.OpenOhms) : FeedFaults.OpenOhms;
        for (int device = 0; device < Devices; device++)
        {
            values[PointOf(device, UnitPoints.Loop)] = IsCut(faults, Feed.Devices[device].RunIndex)
                ? FeedFaults.OpenOhms
                : LoopWithLeak(faults, ohms, Feed.Devices[device].RunIndex, _sharedReturnOhms[device]);
        }

        for (int bare = 0; bare < Bare.Length; bare++)
        {
            values[PointAt(bare, UnitPoints.Loop)] = IsCut(faults, Bare[bare])
                ? FeedFaults.OpenOhms
                : LoopWithLeak(faults, ohms, Bare[bare], 0);
        }
    }

    // The conductors joined at the end of a run, and what leaks beside that.
    private double LoopWithLeak(FeedFaults faults, double[] ohms, int end, double sharedReturn)
    {
        double loop = PathOhms(ohms, end) + sharedReturn;
        for (int run = 0; run < Runs; run++)
        {
            if (double.IsInfinity(faults.LeakOhms[run]) || IsCut(faults, run)) continue;
            double common = CommonOhms(ohms, run, end);
            double beside = Math.Max(loop - common, 1e-9), leaking = faults.LeakOhms[run] + PathOhms(ohms, run) - common;
            loop = common + (beside * leaking / (beside + leaking));
        }

        return loop;
    }

    private double PathOhms(double[] ohms, int end)
    {
        double sum = 0;
        for (int run = end; run >= 0; run = Feed.Parents[run]) sum += ohms[run];
        return sum;
    }

    private double CommonOhms(double[] ohms, int one, int other)
    {
        double sum = 0;
        for (int run = one; run >= 0; run = Feed.Parents[run])
        {
            for (int at = other; at >= 0; at = Feed.Parents[at])
            {
                if (at == run) sum += ohms[run];
            }
        }

        return sum;
    }

    private bool IsCut(FeedFaults faults, int end)
    {
        for (int run = end; run >= 0; run = Feed.Parents[run])
        {
            if (faults.IsOpen[run]) return true;
        }

        return false;
    }

    private void PredictLive(UnitPrediction prediction, FeedFaults faults, double[] ohms, double supplyVolts, FeedNumbers numbers,
        bool isNight)
    {
        DeviceState[] states = isNight ? prediction.ByNight : prediction.ByDay;
        double source = faults.IsProtectionOpen ? 0 : supplyVolts;
        var circuit = new Rung[_parents.Length];
        var rows = new LoadRow[_parents.Length];
        circuit[0] = new Rung(-1, numbers.ProtectionOhms);
        PlaceRuns(circuit, rows, faults, ohms);
        var isOn = new bool[Devices];
        for (int device = 0; device < Devices; device++)
        {
            int node = _firstDevice + device;
            circuit[node] = new Rung(_parents[node], _sharedReturnOhms[device]);
            isOn[device] = source > 0 && _draws[device] && !faults.IsReversed[device] && !IsCut(faults, Feed.Devices[device].RunIndex);
            if (!isOn[device]) states[device] = faults.IsReversed[device] && source > 0 ? DeviceState.WrongCurrent : DeviceState.NeverUp;
        }

        double[] volts = Settle(circuit, rows, faults, source, numbers, isNight, isOn, states);
        Fill(prediction, faults, numbers, circuit, rows, volts, isOn, isNight);
    }

    // With everything on; what would be under its drop-out voltage there goes off, the furthest first.
    private double[] Settle(Rung[] circuit, LoadRow[] rows, FeedFaults faults, double source, FeedNumbers numbers, bool isNight,
        bool[] isOn,
        DeviceState[] states)
    {
        var volts = new double[circuit.Length];
        if (!(source > 0)) return volts;
        while (true)
        {
            for (int device = 0; device < Devices; device++)
            {
                rows[_firstDevice + device] = isOn[device] ? DrawOf(device, faults, numbers, isNight) : default;
            }

            bool isSolved = TrySolve(circuit, rows, source, volts);
            int worst = -1;
            double lowest = 1;
            for (int device = 0; device < Devices; device++)
            {
                if (!isOn[device]) continue;
                double share = isSolved ? volts[_firstDevice + device] / DropOutOf(device) : -rows[_firstDevice + device].AmperesAt(source);
                if (share < lowest) (worst, lowest) = (device, share);
            }

            if (worst < 0) return volts;
            isOn[worst] = false;
            states[worst] = DeviceState.Restarting;
        }
    }

    private static bool TrySolve(Rung[] circuit, LoadRow[] rows, double source, double[] volts)
    {
        var kernel = new RadialKernel(circuit, source);
        kernel.OpenCircuit(volts);
        int iterations = 0;
        return Newton.TryDescend(kernel, new LoadShares(rows), volts, ref iterations);
    }

    private LoadRow DrawOf(int device, FeedFaults faults, FeedNumbers numbers, bool isNight)
    {
        int other = faults.OtherDevice[device];
        return Scaled(other >= 0 ? (isNight ? _otherNight : _otherDay)[other] : (isNight ? _night : _day)[device],
            faults.DrawFactor[device] * numbers.DrawScale[device]);
    }

    private double DropOutOf(int device) => Feed.Devices[device].Starting?.DropOutVolts
        ?? (Feed.Devices[device].Accepted is VoltageRange accepted ? accepted.LowestVolts * DropOutShare : 0);

    private void Fill(UnitPrediction prediction, FeedFaults faults, FeedNumbers numbers, Rung[] circuit, LoadRow[] rows, double[] volts,
        bool[] isOn, bool isNight)
    {
        double[] values = prediction.Values;
        values[PointOf(-1, isNight ? UnitPoints.OutputNight : UnitPoints.OutputDay)] = volts[0];
        values[PointOf(-1, isNight ? UnitPoints.AmperesNight : UnitPoints.AmperesDay)] = Amperes(circuit, rows, volts);
        for (int device = 0; device < Devices; device++)
        {
            int point = PointOf(device, isNight ? UnitPoints.Night : UnitPoints.Day), node = _firstDevice + device;
            bool isCut = IsCut(faults, Feed.Devices[device].RunIndex);
            double at = isCut ? 0 : volts[node];
            double offset = (isNight ? _nightOffset : _dayOffset)[device] * numbers.DrawScale[device] / Expected.DrawScale[device];
            if (isOn[device]) at += offset;
            values[point] = faults.IsReversed[device] ? -at : at;
            DeviceState[] states = isNight ? prediction.ByNight : prediction.ByDay;
            prediction.IsLoose[point] = states[device] == DeviceState.Restarting;
            if (isNight) prediction.IsDim[device] = isOn[device] && at < Feed.Devices[device].Accepted!.LowestVolts;
        }

        for (int bare = 0; bare < Bare.Length; bare++) FillBare(prediction, faults, volts, bare, isNight);
    }

    // What hangs behind a junction restarts, and its voltage jumps with it.
    private void FillBare(UnitPrediction prediction, FeedFaults faults, double[] volts, int bare, bool isNight)
    {
        int run = Bare[bare], point = PointAt(bare, isNight ? UnitPoints.Night : UnitPoints.Day);
        DeviceState[] states = isNight ? prediction.ByNight : prediction.ByDay;
        prediction.Values[point] = IsCut(faults, run) ? 0 : volts[1 + run];
        for (int device = 0; device < Devices; device++)
        {
            prediction.IsLoose[point] |= IsBehind[run][device] && states[device] == DeviceState.Restarting;
        }
    }

    private bool IsInSeries(int one, int other)
    {
        for (int device = 0; device < Devices; device++)
        {
            if (IsBehind[one][device] != IsBehind[other][device]) return false;
        }

        return true;
    }

    // The run that goes on from the end of another in series with it; -1 for none.
    private int NextOf(int run)
    {
        for (int next = 0; next < Runs; next++)
        {
            if (Feed.Parents[next] == run && IsInSeries(next, run)) return next;
        }

        return -1;
    }

    // Every device of the output is unplugged: only what leaks draws.
    private void PredictUnplugged(double[] values, FeedFaults faults, double[] ohms, double source, FeedNumbers numbers)
    {
        var circuit = new Rung[_firstDevice];
        var rows = new LoadRow[_firstDevice];
        circuit[0] = new Rung(-1, numbers.ProtectionOhms);
        bool leaks = PlaceRuns(circuit, rows, faults, ohms);
        var volts = new double[_firstDevice];
        if (!leaks || !(source > 0) || !TrySolve(circuit, rows, source, volts))
        {
            for (int node = 0; node < volts.Length; node++) volts[node] = source;
        }

        values[PointOf(-1, UnitPoints.OutputUnplugged)] = volts[0];
        for (int device = 0; device < Devices; device++)
        {
            int end = Feed.Devices[device].RunIndex;
            double at = IsCut(faults, end) ? 0 : volts[1 + end];
            values[PointOf(device, UnitPoints.Plug)] = faults.IsReversed[device] ? -at : at;
        }

        for (int bare = 0; bare < Bare.Length; bare++)
        {
            values[PointAt(bare, UnitPoints.Plug)] = IsCut(faults, Bare[bare]) ? 0 : volts[1 + Bare[bare]];
        }
    }

    // The runs and what leaks at their ends; whether anything does.
    private bool PlaceRuns(Rung[] circuit, LoadRow[] rows, FeedFaults faults, double[] ohms)
    {
        bool leaks = false;
        for (int run = 0; run < Runs; run++)
        {
            circuit[1 + run] = new Rung(_parents[1 + run], ohms[run]);
            if (double.IsInfinity(faults.LeakOhms[run]) || IsCut(faults, run)) continue;
            rows[1 + run].Siemens = 1 / faults.LeakOhms[run];
            leaks = true;
        }

        return leaks;
    }

    private static double Amperes(Rung[] circuit, LoadRow[] rows, double[] volts)
    {
        double sum = 0;
        for (int node = 0; node < circuit.Length; node++)
        {
            if (volts[node] > 0) sum += rows[node].AmperesAt(volts[node]);
        }

        return sum;
    }

    private static void Loosen(UnitPrediction prediction)
    {
        for (int point = 0; point < prediction.IsLoose.Length; point++)
        {
            int devices = prediction.ByDay.Length;
            int ofOutput = point - (devices * UnitPoints.OfDevice), atEnd = UnitPoints.AtEnd(devices, point);
            bool isUnloaded = atEnd >= 0
                ? atEnd is UnitPoints.Loop or UnitPoints.Plug
                : ofOutput is UnitPoints.Insulation or UnitPoints.OutputUnplugged;
            prediction.IsLoose[point] = !isUnloaded;
        }

        for (int device = 0; device < prediction.ByDay.Length; device++)
        {
            if (prediction.ByDay[device] == DeviceState.Up) prediction.ByDay[device] = DeviceState.Restarting;
            if (prediction.ByNight[device] == DeviceState.Up) prediction.ByNight[device] = DeviceState.Restarting;
        }
    }

    // Its run hangs on another output: a loop from here does not close, and the current here is another's.
    private void BeElsewhere(double[] values, double otherAmperesDay, double otherAmperesNight)
    {
        for (int device = 0; device < Devices; device++) values[PointOf(device, UnitPoints.Loop)] = FeedFaults.OpenOhms;
        for (int bare = 0; bare < Bare.Length; bare++) values[PointAt(bare, UnitPoints.Loop)] = FeedFaults.OpenOhms;
        values[PointOf(-1, UnitPoints.AmperesDay)] = otherAmperesDay;
        values[PointOf(-1, UnitPoints.AmperesNight)] = otherAmperesNight;
    }

    // What the network of both poles has and the tree has not.
    private void Correct(FeedGroup group, Condition day, Condition night, SupplyVolts supply, Func<FedDevice, double> expectedDraw)
    {
        var circuit = FeedCircuit.Of(group, day.At.CableCelsius, new AirOfBoxes(day.At));
        int first = group.Feeds.TakeWhile(f => !ReferenceEquals(f, Feed)).Sum(f => f.Devices.Count);
        double protection = Feed.Output.Protection?.GreatestOhms ?? 0;
        FeedNumbers numbers = new([.. Feed.Runs.Select(r => OhmsOf(r, day.At.CableCelsius))], Expected.DrawScale, protection);
        for (int device = 0; device < Devices; device++)
        {
            double own = protection + PathOhms(numbers.RunOhms, Feed.Devices[device].RunIndex);
            _sharedReturnOhms[device] = Math.Max(0, circuit.OhmsTo(first + device) - own);
        }

        UnitPrediction tree = Predict([], supply, numbers, 0, 0);
        Offset(day, supply.Day, UnitPoints.Day, _dayOffset);
        Offset(night, supply.Night, UnitPoints.Night, _nightOffset);

        void Offset(Condition condition, double volts, int point, double[] offsets)
        {
            RailVolts rail = group.Boxes.Aggregate(RailVolts.Lowest, (r, box) => r.With(box, ReferenceEquals(box, Feed.Box) ? volts
                : box.Supply.Output.SetVolts));
            Load[] loads = [.. group.Devices.Select(d => Load.ConstantPower(Power.FromWatts(
                d.Accepted is null ? 0 : expectedDraw(d) * d.Device.Model.Draw.LoadIn(condition, condition.On).AmperesAt(volts) * volts)))];
            double[] solved = FeedSolver.Solved(circuit, rail, loads);
            for (int device = 0; device < Devices; device++)
            {
                if (solved[first + device] > 0) offsets[device] = solved[first + device] - tree.Values[PointOf(device, point)];
            }
        }
    }
}
