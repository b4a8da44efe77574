using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Backup;

/// <summary>Discharges the battery of a box from full, condition after condition.</summary>
/// <remarks>
/// In one condition the current depends on the state of charge alone. The time between two states is the integral of the charge over the
/// current: three-point Gauss quadrature on each panel, with a panel's edge at every kink of the battery's curves. Where a device drops
/// out, a condition ends or the battery is cut off, the state of charge is found by bisection. The capacity is the least of all conditions:
/// what a cold night leaves is no more because the day before it was warm. That a device has less than it accepts, and that an output
/// carries more than its protective device does, is found like a drop-out, and changes nothing of the run.
/// </remarks>
internal sealed class Discharge
{
    internal const int Panels = 100;

    private const int Halvings = 50;
    private const double JustBelow = 1e-9;

    // Gauss and Legendre, three points on a panel from -1 to 1.
    private static readonly double[] Nodes = [-Math.Sqrt(0.6), 0, Math.Sqrt(0.6)], Weights = [5 / 9.0, 8 / 9.0, 5 / 9.0];

    private readonly Site _site;
    private readonly DistributionBox _box;
    private readonly Battery _battery;
    private readonly IReadOnlyList<Condition> _asked;
    private readonly Queue<Condition> _conditions;
    private readonly double[] _stops;
    private readonly List<BatteryRunPoint> _points = [];
    private readonly List<BatteryDropOut> _dropOuts = [];
    private readonly List<BatteryDropOut> _belowAccepted = [];
    private readonly HashSet<FedDevice> _off = [], _restarting = [], _below = [];
    private readonly bool _restartsDraw;
    private readonly OutputOnBattery.Record[] _outputs;
    private readonly double[] _mayOpen;
    private BatteryLoad _load = null!;
    private Condition _condition = null!;
    private double _capacityShare, _resistanceFactor, _seconds, _secondsLeft, _charge = 1;

    /// <param name="site">The site.</param>
    /// <param name="box">A box with a battery.</param>
    /// <param name="conditions">The conditions in turn; the last one lasts to the end. The battery states its curves at their
    /// temperatures.</param>
    /// <param name="panels">Panels from full to empty.</param>
    /// <param name="restartsDraw">Whether a device that restarts again and again draws all the time; else it draws nothing.</param>
    internal Discharge(
        Site site, DistributionBox box, IEnumerable<Condition> conditions, int panels = Panels, bool restartsDraw = false)
    {
        _site = site;
        _box = box;
        _battery = box.Battery!;
        _restartsDraw = restartsDraw;
        _asked = [.. conditions];
        _conditions = new Queue<Condition>(_asked);
        _capacityShare = _conditions.Min(c => _battery.Chemistry.Capacity.ShareAt(c.At.BoxCelsius)!.Value);
        _stops = [.. Enumerable.Range(0, panels).Select(i => (double)i / panels).Concat(_battery.Chemistry.Kinks)
            .Where(s => s < 1).Distinct().OrderByDescending(s => s)];
        Next();
        _outputs = Array.ConvertAll(_load.Outputs, output => new OutputOnBattery.Record(output));
        _mayOpen = [.. _outputs.Select(_ => double.PositiveInfinity)];
    }

    internal BatteryRun Run()
    {
        Record();
        foreach (double stop in _stops)
        {
            while (_charge > stop)
            {
                if (!_load.IsAnyOn && _conditions.Count == 0) return End(BatteryRunEnd.LastDeviceOff);
                if (!_load.IsAnyOn) Rest();
                else if (Advance(stop) is BatteryRunEnd end) return End(end);
            }
        }

        return End(BatteryRunEnd.Empty);
    }

    // To a state of charge, or to whatever happens before it.
    private BatteryRunEnd? Advance(double stop)
    {
        double reached = IsHeldAt(stop) ? stop : Bisection.LastHeld(_charge, stop, Halvings, IsHeldAt);
        double seconds = SecondsBetween(_charge, reached);
        if (seconds >= _secondsLeft)
        {
            double from = _charge, left = _secondsLeft;
            _charge = Bisection.LastHeld(from, reached, Halvings, state => SecondsBetween(from, state) <= left);
            _seconds += left;
            Record();
            Next();
            return null;
        }

        _seconds += seconds;
        _secondsLeft -= seconds;
        _charge = reached;
        Record();
        return reached > stop ? Happens(stop) : null;
    }

    // Nothing draws until the next condition.
    private void Rest()
    {
        _seconds += _secondsLeft;
        Record();
        Next();
    }

    // Just below the state reached the battery is cut off, the weakest device drops out, or something else is worth telling.
    private BatteryRunEnd? Happens(double stop)
    {
        double below = Math.Max(stop, _charge - JustBelow), rail = RailAt(below);
        if (rail <= _battery.CutOffVolts) return BatteryRunEnd.CutOff;
        if (double.IsNaN(rail) && _restarting.Count > 0) TurnOffRestarting();
        else if (double.IsNaN(rail) || !_load.AllHaveEnough) DropOut();
        else if (!IsAnythingNoted()) _charge = below;
        return null;
    }

    private void DropOut()
    {
        int device = _load.Weakest()!.Value;
        FedDevice fed = _load.Devices[device];
        _load.TurnOff(device);
        bool comesBack = _load.ComesBack(device, RailAt(_charge));
        (_restartsDraw && comesBack ? _restarting : _off).Add(fed);
        if (_restartsDraw && comesBack) _load.DrawAllTheSame(device);
        _dropOuts.Add(new BatteryDropOut(fed.Device, _condition, _seconds, comesBack));
        Record();
    }

    private void TurnOffRestarting()
    {
        _off.UnionWith(_restarting);
        _restarting.Clear();
        KeepOff();
    }

    private bool IsAnythingNoted()
    {
        if (_load.BelowAccepted(_below) is int device)
        {
            _below.Add(_load.Devices[device]);
            _belowAccepted.Add(new BatteryDropOut(_load.Devices[device].Device, _condition, _seconds, comesBack: false));
            return true;
        }

        if (_load.AboveCarried(_mayOpen) is not int output) return false;
        _mayOpen[output] = _seconds;
        return true;
    }

    private void Next()
    {
        _condition = _conditions.Dequeue();
        _secondsLeft = _conditions.Count > 0 ? _condition.Duration!.Value.Seconds : double.PositiveInfinity;
        _load = new BatteryLoad(_site, _box, _condition);
        _resistanceFactor = _battery.Chemistry.Resistance.ShareAt(_condition.At.BoxCelsius)!.Value;
        KeepOff();
    }

    private void KeepOff()
    {
        for (int i = 0; i < _load.Devices.Count; i++)
        {
            if (_off.Contains(_load.Devices[i])) _load.TurnOff(i);
            else if (_restarting.Contains(_load.Devices[i])) _load.DrawAllTheSame(i);
        }
    }

    // Nothing happens there that is not known yet.
    private bool IsHeldAt(double charge) => RailAt(charge) > _battery.CutOffVolts && _load.AllHaveEnough
        && _load.BelowAccepted(_below) is null && _load.AboveCarried(_mayOpen) is null;

    private double RailAt(double charge) =>
        _load.RailVoltsFrom(_battery.VoltsUnderLoad(charge), _battery.OhmsAt(charge, _resistanceFactor));

    private double SecondsBetween(double from, double to)
    {
        double middle = (from + to) / 2, half = (from - to) / 2, seconds = 0;
        for (int i = 0; i < Nodes.Length; i++)
        {
            // Where returns are shared a state between two that the battery holds may be one that it does not: that takes no time.
            double rail = RailAt(middle + (half * Nodes[i]));
            if (!double.IsNaN(rail)) seconds += Weights[i] * half / _battery.ShareASecond(_load.AmperesAt(rail), _capacityShare);
        }

        return seconds;
    }

    private void Record()
    {
        double rail = RailAt(_charge);
        bool isHeld = !double.IsNaN(rail);
        _points.Add(new BatteryRunPoint(_seconds, _charge, isHeld ? rail : 0, isHeld ? _load.AmperesAt(rail) : 0,
            _load.Devices, [.. _load.Volts.Select((v, i) => isHeld && _load.IsOn[i] ? v : 0)], _battery, _capacityShare,
            _resistanceFactor));
        for (int i = 0; isHeld && i < _outputs.Length; i++) _outputs[i].Add(_load.AmperesOf(i), _load.CarriedAmperes[i], _condition);
    }

    private BatteryRun End(BatteryRunEnd end) => new(_box, _points.AsReadOnly(), end, _dropOuts.AsReadOnly(), _belowAccepted.AsReadOnly(),
        Array.AsReadOnly([.. _outputs.Select((output, i) => output.Done(_mayOpen[i]))]),
        () => !_restartsDraw && _dropOuts.Exists(d => d.ComesBack)
            ? new Discharge(_site, _box, _asked, restartsDraw: true).Run()
            : null);
}
