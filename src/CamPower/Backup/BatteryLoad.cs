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

    private readonly DistributionBox _box;
    private readonly List<Part> _parts = [];

    internal BatteryLoad(Site site, DistributionBox box, Condition condition)
    {
        _box = box;
        var air = new AirOfBoxes(condition.At.BoxCelsius);
        var devices = new List<FedDevice>();
        foreach (FeedGroup group in site.Feeds.Where(group => group.Feeds.Any(f => ReferenceEquals(f.Box, box))))
        {
            var part = new Part(group, box, condition, air, first: devices.Count);
            _parts.Add(part);
            devices.AddRange(part.Devices);
        }

        Devices = devices;
        Volts = new double[Devices.Count];
        IsOn = [.. Devices.Select((_, i) => PartOf(i).Draws(i))];
    }

    /// <summary>The devices that the box feeds.</summary>
    internal IReadOnlyList<FedDevice> Devices { get; }

    /// <summary>Which of them draw.</summary>
    internal bool[] IsOn { get; }

    /// <summary>The voltage at each as last solved, on or off; 0 where its circuit has no operating point. [V]</summary>
    internal double[] Volts { get; }

    /// <summary>The current at a voltage of the box; infinite where some circuit has no operating point. [A]</summary>
    internal double AmperesAt(double railVolts)
    {
        RailVolts rail = RailVolts.Lowest.With(_box, railVolts);
        double amperes = 0;
        foreach (Part part in _parts) amperes += part.AmperesAt(rail, Volts);
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

    /// <summary>Whether any device draws.</summary>
    internal bool IsAnyOn => Array.Exists(IsOn, isOn => isOn);

    internal void TurnOff(int device)
    {
        IsOn[device] = false;
        PartOf(device).TurnOff(device);
    }

    /// <summary>Whether a device that is off finds its turn-on voltage.</summary>
    internal bool ComesBack(int device, double railVolts) => railVolts > 0 && Devices[device].Device.Model.Starting is Starting starting
        && PartOf(device).UnloadedVolts(device, RailVolts.Lowest.With(_box, railVolts)) >= starting.TurnOnVolts;

    private bool IsWeaker(int device, int other) => Volts[device] > 0 || Volts[other] > 0
        ? ShareOf(device) < ShareOf(other)
        : PartOf(device).OhmsTo(device) > PartOf(other).OhmsTo(other);

    private Part PartOf(int device) => _parts.FindLast(part => part.First <= device)!;

    private double ShareOf(int device) => Volts[device] / DropOutOf(device);

    private double DropOutOf(int device) => Devices[device].Device.Model.Starting?.DropOutVolts ?? Devices[device].Accepted!.LowestVolts;

    // The circuits that are solved together.
    private sealed class Part
    {
        private readonly FeedCircuit _circuit;
        private readonly Load[] _loads;
        private readonly double[] _volts;
        private readonly int[] _own;

        internal Part(FeedGroup group, DistributionBox box, Condition condition, AirOfBoxes air, int first)
        {
            First = first;
            _circuit = FeedCircuit.Of(group, condition.At.CableCelsius, air);
            _loads = FeedSolver.LoadsIn(condition, group, condition.MotorsMoving ?? int.MaxValue);
            _volts = new double[_loads.Length];
            _own = [.. Enumerable.Range(0, _loads.Length)
                .Where(i => ReferenceEquals(group.Devices[i].Box, box) && group.Devices[i].Accepted is not null)];
            foreach (int other in Enumerable.Range(0, _loads.Length).Except(_own)) _loads[other] = Load.None;
            Devices = [.. _own.Select(i => group.Devices[i])];
        }

        /// <summary>The place of its first device among those of the box.</summary>
        internal int First { get; }

        internal IReadOnlyList<FedDevice> Devices { get; }

        internal double AmperesAt(RailVolts rail, double[] volts)
        {
            bool isSolved = _circuit.TrySolve(rail, _loads, _volts);
            double amperes = isSolved ? 0 : double.PositiveInfinity;
            for (int i = 0; i < _own.Length; i++)
            {
                Load load = _loads[_own[i]];
                volts[First + i] = isSolved ? _volts[_own[i]] : 0;
                if (isSolved && !ReferenceEquals(load, Load.None)) amperes += load.AmperesAt(_volts[_own[i]]);
            }

            return amperes;
        }

        internal bool Draws(int device) => LoadOf(device).AmperesAt(1) > 0;

        internal void TurnOff(int device) => LoadOf(device) = Load.None;

        internal double OhmsTo(int device) => _circuit.OhmsTo(_own[device - First]);

        internal double UnloadedVolts(int device, RailVolts rail) => _circuit.UnloadedVolts(_own[device - First], rail, _loads);

        private ref Load LoadOf(int device) => ref _loads[_own[device - First]];
    }
}
