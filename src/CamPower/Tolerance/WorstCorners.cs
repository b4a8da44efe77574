using System;
using System.Linq;

namespace CamPower.Tolerance;

/// <summary>The lowest and highest voltages and currents that the ranges of a circuit's parts allow. SI doubles.</summary>
/// <remarks>
/// Where every load draws more at less voltage, and the resistance through which one load's current lowers another's voltage is never
/// negative, V = Vs − R·I(V) is isotone: its highest solution falls with every resistance and every draw, and rises with the source. The
/// corners are then exact. A load of constant resistance draws less at less voltage; with its current held at the most, or the least, that
/// it may be, the same argument gives bounds. Where shields divide the return currents, no shared resistance exceeds the return of the
/// device alone (a network of resistances does not amplify), which gives bounds again.
/// </remarks>
internal sealed class WorstCorners
{
    private const int MostRounds = 500;
    private const double Settled = 1e-12;

    private readonly UncertainCircuit _circuit;
    private readonly double[] _down, _up;

    private WorstCorners(UncertainCircuit circuit)
    {
        _circuit = circuit;
        _down = Corner(circuit.Parts, isDown: true);
        _up = Corner(circuit.Parts, isDown: false);
        int devices = circuit.Loads.Length, feeds = circuit.Group.Feeds.Count;
        LowestVolts = new double[devices];
        HighestVolts = new double[devices];
        LowestAmperes = new double[feeds];
        HighestAmperes = new double[feeds];
    }

    /// <summary>Lowest voltage of each device; 0 where a corner has no operating point. [V]</summary>
    internal double[] LowestVolts { get; }

    /// <summary>Highest voltage of each device. [V]</summary>
    internal double[] HighestVolts { get; }

    /// <summary>Lowest current of each feed. [A]</summary>
    internal double[] LowestAmperes { get; }

    /// <summary>Highest current of each feed; infinite where a corner has no operating point. [A]</summary>
    internal double[] HighestAmperes { get; }

    /// <summary>Whether they are corners, not bounds.</summary>
    internal bool IsProven { get; private set; }

    internal static WorstCorners Of(UncertainCircuit circuit)
    {
        var corners = new WorstCorners(circuit);
        if (circuit.HasOneWayBack) corners.BoundByCorners();
        else corners.BoundByReturns();
        corners.BoundCurrents();
        return corners;
    }

    /// <summary>The corner of everything that lowers voltages, or of everything that lifts them.</summary>
    internal static double[] Corner(UncertainParts parts, bool isDown) => Array.ConvertAll(parts.All,
        p => p.Quantity == UncertainQuantity.SupplyVoltage == isDown ? p.Range.Low : p.Range.High);

    private void BoundByCorners()
    {
        Load[] loads = _circuit.Loads;
        double most = Enumerable.Range(0, _circuit.Group.Feeds.Count).Max(f => _circuit.SourceVolts(f, _up));
        _circuit.TrySolve(_down, Array.ConvertAll(loads, load => Frozen(load, most)), LowestVolts);
        _circuit.TrySolve(_up, [.. loads.Select((load, i) => Frozen(load, LowestVolts[i]))], HighestVolts);
        IsProven = !loads.Any(load => load.Siemens > 0)
            || (LowestVolts.All(v => v > 0) && loads.Select((load, i) => DrawsMoreAtLess(load, HighestVolts[i])).All(draws => draws));
        if (!IsProven) return;
        _circuit.TrySolve(_down, loads, LowestVolts);
        _circuit.TrySolve(_up, loads, HighestVolts);
    }

    // Out along the own tree of the outgoing poles, back as if the current of all devices took the return of each.
    private void BoundByReturns()
    {
        int devices = LowestVolts.Length;
        for (int i = 0; i < devices; i++)
        {
            LowestVolts[i] = _circuit.SourceVolts(_circuit.FeedOfDevice[i], _down);
            HighestVolts[i] = _circuit.SourceVolts(_circuit.FeedOfDevice[i], _up);
        }

        // No port has more than all boxes in series.
        double[] sources = (double[])LowestVolts.Clone();
        double most = Enumerable.Range(0, _circuit.Group.Feeds.Count).GroupBy(f => _circuit.Group.Feeds[f].Box)
            .Sum(feeds => _circuit.SourceVolts(feeds.First(), _up));
        for (int round = 0; round < MostRounds; round++)
        {
            double total = 0, change = 0;
            for (int i = 0; i < devices; i++) total += MostAmperes(i, most);
            for (int i = 0; i < devices; i++)
            {
                double next = sources[i] - (total * _circuit.WholeWayOhms(i, _down));
                change = Math.Max(change, LowestVolts[i] - next);
                LowestVolts[i] = next;
            }

            if (Array.Exists(LowestVolts, v => !(v > 0)))
            {
                Array.Clear(LowestVolts, 0, devices);
                break;
            }

            if (change <= Settled) break;
        }

        // Another box's current may lift this one's negative as well as lower it.
        if (_circuit.Group.Boxes.Count == 1) return;
        double all = 0;
        for (int i = 0; i < devices; i++) all += LowestVolts[i] > 0 ? MostAmperes(i, most) : double.PositiveInfinity;
        for (int i = 0; i < devices; i++) HighestVolts[i] += all * _circuit.WholeWayOhms(i, _down);
    }

    private double MostAmperes(int device, double highest) =>
        _circuit.DrawScale(device, _down) * Frozen(_circuit.Loads[device], highest).AmperesAt(LowestVolts[device]);

    private void BoundCurrents()
    {
        for (int feed = 0; feed < LowestAmperes.Length; feed++)
        {
            LowestAmperes[feed] = IsProven
                ? _circuit.FeedAmperes(feed, _up, _circuit.Loads, HighestVolts)
                : BoundOf(feed, _up, HighestVolts, LowestVolts);
            HighestAmperes[feed] = _circuit.Group.Feeds[feed].Devices.Any() ? HighestOf(feed) : 0;
        }

        double HighestOf(int feed)
        {
            if (Array.Exists(LowestVolts, v => !(v > 0))) return double.PositiveInfinity;
            return IsProven
                ? _circuit.FeedAmperes(feed, _down, _circuit.Loads, LowestVolts)
                : BoundOf(feed, _down, LowestVolts, HighestVolts);
        }

        double BoundOf(int feed, double[] corner, double[] volts, double[] ofResistance)
        {
            Load[] frozen = [.. _circuit.Loads.Select((load, i) => Frozen(load, ofResistance[i]))];
            return _circuit.FeedAmperes(feed, corner, frozen, volts);
        }
    }

    // The part of constant resistance as the current that it draws at a voltage.
    private static Load Frozen(Load load, double volts) =>
        load.Siemens > 0 ? Load.Of(load.Watts, load.Amperes + (load.Siemens * volts), 0) : load;

    private static bool DrawsMoreAtLess(Load load, double highestVolts) => load.SlopeAt(highestVolts) <= 0;
}
