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
    private const double LeastOhms = 1e-12;

    private readonly double[] _returnShare;
    private readonly LiveReadings _day, _night;

    internal FeedModel(OutputFeed feed, FeedGroup group, int unit, int box, FeedNumbers expected, SupplyVolts supply, Condition day,
        Condition night, IReadOnlyList<Device> models, Func<FedDevice, double> expectedDraw)
    {
        Feed = feed;
        Unit = unit;
        Box = box;
        Expected = expected;
        Runs = feed.Runs.Count;
        Devices = feed.Devices.Count;
        IsBehind = [.. feed.Runs.Select(run => feed.Devices.Select(d => d.Path.Contains(run)).ToArray())];
        Bare = group.SharesReturns
            ? []
            : [.. Enumerable.Range(0, Runs).Where(run => IsBehind[run].Any(b => b) && feed.Devices.All(d => d.RunIndex != run))];
        SharedReturnOhms = new double[Devices];
        _day = new LiveReadings(this, models, day, isByNight: false);
        _night = new LiveReadings(this, models, night, isByNight: true);
        _returnShare = [.. feed.Runs.Select(run => ReturnShare(run, day.At.CableCelsius))];
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

    /// <summary>For each device what returns that are other runs' add to its loop. [Ω]</summary>
    internal double[] SharedReturnOhms { get; }

    /// <summary>Loop resistance of a run of the site, without a return that is another run's. [Ω]</summary>
    internal static double OhmsOf(SiteRun run, double celsius) =>
        run.ReturnAt is null ? run.Run.OhmsAt(celsius) : run.Run.OutgoingOhmsAt(celsius);

    /// <summary>The point of a device.</summary>
    internal static int PointOf(int device, int point) => (device * UnitPoints.OfDevice) + point;

    /// <summary>The point of the output.</summary>
    internal int OutputPoint(int point) => (Devices * UnitPoints.OfDevice) + point;

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
        while (!scope.IsRead(at) && NextOf(at) is int next)
        {
            at = next;
            if (Expected.RunOhms[at] > Expected.RunOhms[best]) best = at;
        }

        return best;
    }

    /// <summary>Resistance of the way to the end of a run. [Ω]</summary>
    internal double PathOhms(double[] ohms, int end)
    {
        double sum = 0;
        for (int run = end; run >= 0; run = Feed.Parents[run]) sum += ohms[run];
        return sum;
    }

    /// <summary>Whether a conductor is open on the way to the end of a run.</summary>
    internal bool IsCut(FeedFaults faults, int end)
    {
        for (int run = end; run >= 0; run = Feed.Parents[run])
        {
            if (faults.IsOpen[run]) return true;
        }

        return false;
    }

    internal UnitPrediction Predict(IReadOnlyList<Deviation> deviations, SupplyVolts supply, FeedNumbers numbers, double otherAmperesDay,
        double otherAmperesNight)
    {
        FeedFaults faults = FeedFaults.Of(deviations, Unit, Runs, Devices);
        double[] ohms = new double[Runs];
        for (int run = 0; run < Runs; run++) ohms[run] = (numbers.RunOhms[run] * faults.RunFactor[run]) + faults.RunOhms[run];
        var prediction = new UnitPrediction(Points, Devices);
        var unloaded = new UnloadedReadings(this, faults, ohms);
        unloaded.PredictDead(prediction.Values);
        unloaded.PredictUnplugged(prediction.Values, faults.IsProtectionOpen ? 0 : supply.Unloaded, numbers.ProtectionOhms);
        double[] loaded = Loaded(faults, ohms, prediction.HasShieldCurrent);
        _day.Predict(prediction, faults, loaded, supply.Day, numbers);
        _night.Predict(prediction, faults, loaded, supply.Night, numbers);
        if (supply.IsUnsteady) prediction.MarkUnsteady();
        if (faults.IsElsewhere) ReadAnotherOutput(prediction.Values, otherAmperesDay, otherAmperesNight);
        return prediction;
    }

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

    private static double ReturnShare(SiteRun run, double celsius) =>
        run.ReturnAt is null ? run.Run.ReturnOhmsAt(celsius) / Math.Max(run.Run.OhmsAt(celsius), LeastOhms) : 0;

    private double PathReturn(double[] ohms, int device)
    {
        double sum = 0;
        for (int run = 0; run < Runs; run++) sum += IsBehind[run][device] ? ohms[run] * _returnShare[run] : 0;
        return sum;
    }

    private bool IsInSeries(int one, int other)
    {
        for (int device = 0; device < Devices; device++)
        {
            if (IsBehind[one][device] != IsBehind[other][device]) return false;
        }

        return true;
    }

    // The run that goes on from the end of another in series with it; null where none does.
    private int? NextOf(int run)
    {
        for (int next = 0; next < Runs; next++)
        {
            if (Feed.Parents[next] == run && IsInSeries(next, run)) return next;
        }

        return null;
    }

    // Its run hangs on another output: a loop from here does not close, and the current here is another's.
    private void ReadAnotherOutput(double[] values, double otherAmperesDay, double otherAmperesNight)
    {
        for (int device = 0; device < Devices; device++) values[PointOf(device, UnitPoints.Loop)] = FeedFaults.OpenOhms;
        for (int bare = 0; bare < Bare.Length; bare++) values[PointAt(bare, UnitPoints.Loop)] = FeedFaults.OpenOhms;
        values[OutputPoint(UnitPoints.AmperesDay)] = otherAmperesDay;
        values[OutputPoint(UnitPoints.AmperesNight)] = otherAmperesNight;
    }

    // What the network of both poles has and the tree has not.
    private void Correct(FeedGroup group, Condition day, Condition night, SupplyVolts supply, Func<FedDevice, double> expectedDraw)
    {
        var circuit = FeedCircuit.Of(group, day.At.CableCelsius, new AirOfBoxes(day.At.BoxCelsius));
        int first = group.Feeds.TakeWhile(f => !ReferenceEquals(f, Feed)).Sum(f => f.Devices.Count);
        double protection = Feed.Output.Protection?.GreatestOhms ?? 0;
        FeedNumbers numbers = new([.. Feed.Runs.Select(r => OhmsOf(r, day.At.CableCelsius))], Expected.DrawScale, protection);
        for (int device = 0; device < Devices; device++)
        {
            double own = protection + PathOhms(numbers.RunOhms, Feed.Devices[device].RunIndex);
            SharedReturnOhms[device] = Math.Max(0, circuit.OhmsTo(first + device) - own);
        }

        UnitPrediction tree = Predict([], supply, numbers, 0, 0);
        Offset(day, supply.Day, UnitPoints.Day, _day.Offsets);
        Offset(night, supply.Night, UnitPoints.Night, _night.Offsets);

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
