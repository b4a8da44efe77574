using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Backup;

/// <summary>What a box feeds in one condition at whatever voltage its battery holds. SI doubles; not safe from several threads.</summary>
/// <remarks>Devices drop out one after the other. What other boxes feed in the same circuits is off with the mains.</remarks>
internal sealed class BatteryLoad
{
    private const int MostPasses = 10_000;
    private const double Close = 1e-12;

    private readonly RailVolts _rail;
    private readonly List<Part> _parts = [];
    private readonly Part[] _partOf;
    private readonly int[][] _devicesOf;

    internal BatteryLoad(Site site, DistributionBox box, Condition condition)
    {
        _rail = RailVolts.Lowest.With(box, 1);
        var air = new AirOfBoxes(condition.At);
        var devices = new List<FedDevice>();
        foreach (FeedGroup group in site.Feeds.Where(group => group.Feeds.Any(f => ReferenceEquals(f.Box, box))))
        {
            var part = new Part(group, box, condition, air, first: devices.Count);
            _parts.Add(part);
            devices.AddRange(part.Devices);
        }

        Devices = devices;
        Volts = new double[Devices.Count];
        _partOf = [.. Devices.Select((_, i) => _parts.FindLast(part => part.First <= i)!)];
        IsOn = [.. Devices.Select((_, i) => _partOf[i].Draws(i))];
        OutputFeed[] feeds = [.. _parts.SelectMany(part => part.Feeds)];
        Outputs = Array.ConvertAll(feeds, feed => feed.Output);
        _devicesOf = Array.ConvertAll(feeds, feed => feed.Devices.Select(d => devices.IndexOf(d)).Where(i => i >= 0).ToArray());
        CarriedAmperes = Array.ConvertAll(Outputs, output => CarriedBy(output, condition.At.BoxCelsius));
    }

    /// <summary>The devices that the box feeds.</summary>
    internal IReadOnlyList<FedDevice> Devices { get; }

    /// <summary>Which of them run. One that restarts again and again does not, and draws all the same.</summary>
    internal bool[] IsOn { get; }

    /// <summary>The voltage at each as last solved, on or off; 0 where its circuit has no operating point. [V]</summary>
    internal double[] Volts { get; }

    /// <summary>The outputs of the box that are used.</summary>
    internal BoxOutput[] Outputs { get; }

    /// <summary>What the protective device of each carries continuously in the air around the box, for the supply warms it no more;
    /// infinite where nothing limits it, or it is not known. [A]</summary>
    internal double[] CarriedAmperes { get; }

    /// <summary>The current at a voltage of the box; infinite where some circuit has no operating point. [A]</summary>
    internal double AmperesAt(double railVolts)
    {
        _rail.Move(railVolts);
        double amperes = 0;
        foreach (Part part in _parts) amperes += part.AmperesAt(_rail, Volts);
        return amperes;
    }

    /// <summary>The current of an output, as last solved. [A]</summary>
    internal double AmperesOf(int output)
    {
        double amperes = 0;
        foreach (int device in _devicesOf[output]) amperes += _partOf[device].AmperesOf(device, Volts[device]);
        return amperes;
    }

    /// <summary>The highest voltage that a source holds under this load; NaN where it holds none. [V]</summary>
    /// <remarks>Where the load draws more as the voltage falls, each pass from the open-circuit voltage down is lower than the one before,
    /// and none is below the highest balance. Where it draws less, a pass goes back up: the balance is between the two.</remarks>
    internal double RailVoltsFrom(double openVolts, double ohms)
    {
        double above = openVolts, volts = openVolts;
        for (int pass = 0; pass < MostPasses; pass++)
        {
            double next = openVolts - (ohms * AmperesAt(volts));
            if (!(next > 0)) return double.NaN;
            if (Math.Abs(volts - next) <= Close * openVolts) return next;
            if (next > volts) return Between(volts, above, openVolts, ohms);
            above = volts;
            volts = next;
        }

        return double.NaN;
    }

    private double Between(double low, double high, double openVolts, double ohms)
    {
        while (high - low > Close * openVolts)
        {
            double middle = (low + high) / 2;
            if (openVolts - (ohms * AmperesAt(middle)) > middle) low = middle;
            else high = middle;
        }

        AmperesAt(low);
        return low;
    }

    /// <summary>The device with the least of its drop-out voltage, as last solved; null where all are off.</summary>
    /// <remarks>Where a circuit has no operating point, the one that is farthest by resistance.</remarks>
    internal int? Weakest()
    {
        int? weakest = null;
        for (int i = 0; i < Volts.Length; i++)
        {
            if (IsOn[i] && (weakest is not int other || IsWeaker(i, other))) weakest = i;
        }

        return weakest;
    }

    /// <summary>Whether every device that is on has its drop-out voltage, as last solved.</summary>
    internal bool AllHaveEnough => Weakest() is not int weakest || !Limits.IsBelow(Volts[weakest], DropOutOf(weakest));

    /// <summary>A device that runs, and has less than it accepts, as last solved; null where there is none but those in a set.</summary>
    internal int? BelowAccepted(HashSet<FedDevice> known)
    {
        for (int i = 0; i < Volts.Length; i++)
        {
            if (IsOn[i] && Limits.IsBelow(Volts[i], Devices[i].Accepted!.LowestVolts) && !known.Contains(Devices[i])) return i;
        }

        return null;
    }

    /// <summary>An output that carries more than its protective device does continuously, as last solved; null where there is none but
    /// those of which a time is known.</summary>
    internal int? AboveCarried(double[] knownSeconds)
    {
        for (int i = 0; i < Outputs.Length; i++)
        {
            if (double.IsInfinity(knownSeconds[i]) && Limits.IsAbove(AmperesOf(i), CarriedAmperes[i])) return i;
        }

        return null;
    }

    /// <summary>Whether any device draws and runs.</summary>
    internal bool IsAnyOn => Array.Exists(IsOn, isOn => isOn);

    internal void TurnOff(int device)
    {
        IsOn[device] = false;
        _partOf[device].TurnOff(device);
    }

    /// <summary>Has a device draw that does not run.</summary>
    internal void DrawAllTheSame(int device)
    {
        IsOn[device] = false;
        _partOf[device].TurnOn(device);
    }

    /// <summary>Whether a device that is off finds its turn-on voltage.</summary>
    internal bool ComesBack(int device, double railVolts)
    {
        if (!(railVolts > 0) || Devices[device].Device.Model.Starting is not Starting starting) return false;
        _rail.Move(railVolts);
        return _partOf[device].UnloadedVolts(device, _rail) >= starting.TurnOnVolts;
    }

    private static double CarriedBy(BoxOutput output, double airCelsius) =>
        output.Protection is ProtectiveDevice device && device.MostFactorIn(airCelsius) is double factor
            ? device.CarriedAmperes(factor)
            : double.PositiveInfinity;

    private bool IsWeaker(int device, int other) => Volts[device] > 0 || Volts[other] > 0
        ? ShareOf(device) < ShareOf(other)
        : _partOf[device].OhmsTo(device) > _partOf[other].OhmsTo(other);

    private double ShareOf(int device) => Volts[device] / DropOutOf(device);

    private double DropOutOf(int device) => Devices[device].Device.Model.Starting?.DropOutVolts ?? Devices[device].Accepted!.LowestVolts;

    // The circuits that are solved together.
    private sealed class Part
    {
        private readonly DistributionBox _box;
        private readonly FeedCircuit _circuit;
        private readonly Load[] _loads, _asked;
        private readonly double[] _volts;
        private readonly int[] _own;

        internal Part(FeedGroup group, DistributionBox box, Condition condition, AirOfBoxes air, int first)
        {
            First = first;
            _box = box;
            _circuit = FeedCircuit.Of(group, condition.At.CableCelsius, air).OfOneThread();
            _loads = FeedSolver.LoadsIn(condition, group, condition.MotorsMoving ?? int.MaxValue);
            _volts = new double[_loads.Length];
            _own = [.. Enumerable.Range(0, _loads.Length)
                .Where(i => ReferenceEquals(group.Devices[i].Box, box) && group.Devices[i].Accepted is not null)];
            foreach (int other in Enumerable.Range(0, _loads.Length).Except(_own)) _loads[other] = Load.None;
            _asked = [.. _loads];
            Devices = [.. _own.Select(i => group.Devices[i])];
        }

        /// <summary>The place of its first device among those of the box.</summary>
        internal int First { get; }

        internal IReadOnlyList<FedDevice> Devices { get; }

        /// <summary>What the outputs of the box feed in it.</summary>
        internal IEnumerable<OutputFeed> Feeds => _circuit.Group.Feeds.Where(feed => ReferenceEquals(feed.Box, _box));

        internal double AmperesAt(RailVolts rail, double[] volts)
        {
            bool isSolved = _circuit.TrySolve(rail, _loads, _volts);
            double amperes = isSolved ? 0 : double.PositiveInfinity;
            for (int i = 0; i < _own.Length; i++)
            {
                volts[First + i] = isSolved ? _volts[_own[i]] : 0;
                if (isSolved) amperes += AmperesOf(First + i, _volts[_own[i]]);
            }

            return amperes;
        }

        internal double AmperesOf(int device, double volts)
        {
            Load load = LoadOf(device);
            return ReferenceEquals(load, Load.None) || !(volts > 0) ? 0 : load.AmperesAt(volts);
        }

        internal bool Draws(int device) => LoadOf(device).AmperesAt(1) > 0;

        internal void TurnOff(int device) => LoadOf(device) = Load.None;

        internal void TurnOn(int device) => LoadOf(device) = _asked[_own[device - First]];

        internal double OhmsTo(int device) => _circuit.OhmsTo(_own[device - First]);

        internal double UnloadedVolts(int device, RailVolts rail) => _circuit.UnloadedVolts(_own[device - First], rail, _loads);

        private ref Load LoadOf(int device) => ref _loads[_own[device - First]];
    }
}
