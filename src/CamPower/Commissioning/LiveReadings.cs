using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Commissioning;

/// <summary>What a feed reads with everything plugged in, by day without infrared or by night with it.</summary>
internal sealed class LiveReadings
{
    // A device that states no drop-out voltage is taken to restart below this share of the lowest that it accepts: a guess of what
    // usual supplies of cameras do, for the model of what may be wrong only. No verdict of a site rests on it.
    private const double DropOutShare = 0.7;

    private readonly FeedModel _feed;
    private readonly bool _isByNight;
    private readonly LoadRow[] _draws, _others;

    /// <param name="feed">The feed.</param>
    /// <param name="models">The models of the site, any of which may be in the place of another.</param>
    /// <param name="condition">The condition, by day or by night.</param>
    /// <param name="isByNight">Whether infrared is on.</param>
    internal LiveReadings(FeedModel feed, IReadOnlyList<Device> models, Condition condition, bool isByNight)
    {
        _feed = feed;
        _isByNight = isByNight;
        _draws = [.. feed.Feed.Devices.Select(d => RowOf(d.Device.Model, condition))];
        _others = [.. models.Select(model => RowOf(model, condition))];
        Offsets = new double[feed.Devices];
    }

    /// <summary>What the network of both poles adds to the voltage of each device. [V]</summary>
    internal double[] Offsets { get; }

    private int AtEnd => _isByNight ? UnitPoints.Night : UnitPoints.Day;

    internal void Predict(UnitPrediction prediction, FeedFaults faults, double[] ohms, double supplyVolts, FeedNumbers numbers)
    {
        DeviceState[] states = _isByNight ? prediction.ByNight : prediction.ByDay;
        double source = faults.IsProtectionOpen ? 0 : supplyVolts;
        var ladder = new FeedLadder(_feed, faults, ohms, numbers.ProtectionOhms, withDevices: true);
        var isOn = new bool[_feed.Devices];
        for (int device = 0; device < isOn.Length; device++)
        {
            isOn[device] = source > 0 && _feed.Feed.Devices[device].Accepted is not null && !faults.IsReversed[device]
                && !_feed.IsCut(faults, _feed.Feed.Devices[device].RunIndex);
            if (!isOn[device]) states[device] = faults.IsReversed[device] && source > 0 ? DeviceState.WrongCurrent : DeviceState.NeverUp;
            else ladder.Rows[NodeOf(device)] = DrawOf(device, faults, numbers);
        }

        if (source > 0) Settle(ladder, source, isOn, states);
        prediction.Values[_feed.OutputPoint(_isByNight ? UnitPoints.OutputNight : UnitPoints.OutputDay)] = ladder.Volts[0];
        prediction.Values[_feed.OutputPoint(_isByNight ? UnitPoints.AmperesNight : UnitPoints.AmperesDay)] = ladder.Amperes();
        ReadDevices(prediction, states, faults, numbers, ladder.Volts, isOn);
        for (int bare = 0; bare < _feed.Bare.Length; bare++) ReadJunction(prediction, states, faults, ladder.Volts, bare);
    }

    // With everything on; what would be under its drop-out voltage there goes off, the furthest first.
    private void Settle(FeedLadder ladder, double source, bool[] isOn, DeviceState[] states)
    {
        while (true)
        {
            bool isSolved = ladder.TrySolve(source);
            int? worst = null;
            double lowest = 1;
            for (int device = 0; device < isOn.Length; device++)
            {
                if (!isOn[device]) continue;
                int node = NodeOf(device);
                double share = isSolved ? ladder.Volts[node] / DropOutOf(device) : -ladder.Rows[node].AmperesAt(source);
                if (share < lowest) (worst, lowest) = (device, share);
            }

            if (worst is not int off) return;
            isOn[off] = false;
            states[off] = DeviceState.Restarting;
            ladder.Rows[NodeOf(off)] = default;
        }
    }

    private void ReadDevices(
        UnitPrediction prediction, DeviceState[] states, FeedFaults faults, FeedNumbers numbers, double[] volts, bool[] isOn)
    {
        for (int device = 0; device < isOn.Length; device++)
        {
            FedDevice fed = _feed.Feed.Devices[device];
            int point = FeedModel.PointOf(device, AtEnd);
            double at = _feed.IsCut(faults, fed.RunIndex) ? 0 : volts[NodeOf(device)];
            if (isOn[device]) at += Offsets[device] * numbers.DrawScale[device] / _feed.Expected.DrawScale[device];
            prediction.Values[point] = faults.IsReversed[device] ? -at : at;
            prediction.IsUnsteady[point] = states[device] == DeviceState.Restarting;
            if (_isByNight) prediction.IsDim[device] = isOn[device] && at < fed.Accepted!.LowestVolts;
        }
    }

    // What hangs behind a junction restarts, and its voltage jumps with it.
    private void ReadJunction(UnitPrediction prediction, DeviceState[] states, FeedFaults faults, double[] volts, int bare)
    {
        int run = _feed.Bare[bare], point = _feed.PointAt(bare, AtEnd);
        prediction.Values[point] = _feed.IsCut(faults, run) ? 0 : volts[1 + run];
        for (int device = 0; device < states.Length; device++)
        {
            prediction.IsUnsteady[point] |= _feed.IsBehind[run][device] && states[device] == DeviceState.Restarting;
        }
    }

    private int NodeOf(int device) => 1 + _feed.Runs + device;

    private LoadRow DrawOf(int device, FeedFaults faults, FeedNumbers numbers)
    {
        LoadRow row = faults.OtherDevice[device] is int other ? _others[other] : _draws[device];
        double by = faults.DrawFactor[device] * numbers.DrawScale[device];
        return new LoadRow { Watts = row.Watts * by, Amperes = row.Amperes * by, Siemens = row.Siemens * by };
    }

    private double DropOutOf(int device) => _feed.Feed.Devices[device].Starting?.DropOutVolts
        ?? (_feed.Feed.Devices[device].Accepted is VoltageRange accepted ? accepted.LowestVolts * DropOutShare : 0);

    // Of a load that draws the larger of two, the one that is the larger at the set point.
    private LoadRow RowOf(Device model, Condition condition)
    {
        Load load = model.Draw.LoadIn(condition, condition.On);
        if (!load.IsLargerOf) return new LoadRow { Watts = load.Watts, Amperes = load.Amperes, Siemens = load.Siemens };
        return load.Watts > load.Amperes * _feed.Feed.Box.Supply.Output.SetVolts
            ? new LoadRow { Watts = load.Watts }
            : new LoadRow { Amperes = load.Amperes };
    }
}
