using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Circuits;

namespace CamPower.Assessment;

/// <summary>Which devices on one output stay up, where turn-on and drop-out decide it.</summary>
/// <remarks>
/// One event at a time, in a fixed order: the device furthest under its drop-out voltage goes off first; when none is under it, the one
/// furthest above its turn-on voltage comes on. Without an operating point everything slides down together: the device goes off that is
/// nearest to its drop-out voltage at the maximum power that the circuit carries (or, where it carries none, the one at the end of the most
/// resistance). Devices that tie go off together, and come on by name. When a state comes back the sequence repeats, once those
/// that could have come on in it, and were never their turn, have: who is on in all of its states and never under its drop-out voltage is
/// up, who else is on in some is restarting. A device that does not declare the two voltages is always on.
/// </remarks>
internal sealed class OnOffSequence
{
    private readonly FeedCircuit _circuit;
    private readonly RailVolts _rail;
    private readonly Load[] _loads;
    private readonly Starting?[] _startings;
    private readonly string[] _names;
    private readonly bool[] _on, _failsToClimb, _letIn;
    private readonly double[] _volts;
    private readonly CancellationToken _cancellationToken;

    internal OnOffSequence(FeedCircuit circuit, RailVolts rail, Load[] loads, bool fromOff, CancellationToken cancellationToken)
    {
        _circuit = circuit;
        _rail = rail;
        _loads = loads;
        _startings = [.. circuit.Group.Devices.Select(d => d.Starting)];
        _cancellationToken = cancellationToken;
        _names = [.. circuit.Group.Devices.Select(d => d.Device.Name)];
        _on = [.. _startings.Select(s => s is null || !fromOff)];
        _failsToClimb = new bool[loads.Length];
        _letIn = new bool[loads.Length];
        _volts = new double[loads.Length];
        States = new DeviceState[loads.Length];
        Volts = new double[loads.Length];
        Run();
    }

    /// <summary>State of each device.</summary>
    internal DeviceState[] States { get; }

    /// <summary>For each device that is up the lowest voltage that it sees. [V]</summary>
    internal double[] Volts { get; }

    private void Run()
    {
        List<(bool[] On, double[]? Volts)> recurring = Recurring();
        while (LetsIn(recurring)) recurring = Recurring();
        Conclude(recurring);
    }

    // From the present state to the one that stays, or to those that come back for ever.
    private List<(bool[] On, double[]? Volts)> Recurring()
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var history = new List<(bool[] On, double[]? Volts)>();
        while (true)
        {
            _cancellationToken.ThrowIfCancellationRequested();
            string key = string.Concat(_on.Select(on => on ? '1' : '0'));
            if (seen.TryGetValue(key, out int first)) return history.GetRange(first, history.Count - first);

            seen.Add(key, history.Count);
            bool solved = _circuit.TrySolve(_rail, Drawing(), _volts);
            history.Add(([.. _on], solved ? [.. _volts] : null));
            List<int> next = solved ? NextToDrop() : FirstToLetGo();
            if (next.Count == 0 && solved) next = NextToRise(CanComeOn);
            if (next.Count == 0) return history.GetRange(history.Count - 1, 1);
            foreach (int device in next) _on[device] = !_on[device];
        }
    }

    // Others that come and go may always be ahead of a device that could come on beside them: each gets its turn once.
    private bool LetsIn(List<(bool[] On, double[]? Volts)> recurring)
    {
        if (recurring.Count == 1) return false;
        foreach ((bool[] on, double[]? volts) in recurring)
        {
            if (volts is null) continue;
            on.CopyTo(_on, 0);
            volts.CopyTo(_volts, 0);
            foreach (int device in NextToRise(i => !_letIn[i] && recurring.TrueForAll(state => !state.On[i]) && CanComeOn(i)))
            {
                return _letIn[device] = _on[device] = true;
            }
        }

        return false;
    }

    // A state without an operating point has no voltages: it lasts until the device at the end goes off.
    private void Conclude(List<(bool[] On, double[]? Volts)> recurring)
    {
        bool neverBalances = recurring.TrueForAll(state => state.Volts is null);
        for (int i = 0; i < States.Length; i++)
        {
            int device = i;
            double lowest = recurring.Min(state => state.Volts?[device] ?? double.PositiveInfinity);
            bool always = recurring.TrueForAll(state => state.On[device]), sometimes = recurring.Exists(state => state.On[device]);
            States[i] = neverBalances ? DeviceState.NoOperatingPoint
                : always && !IsUnderDropOut(device, lowest) ? DeviceState.Up
                : sometimes || _letIn[i] || _failsToClimb[i] ? DeviceState.Restarting
                : DeviceState.NeverUp;
            if (States[i] == DeviceState.Up) Volts[i] = lowest;
        }
    }

    private Load[] Drawing() => [.. _loads.Select((load, i) => _on[i] ? load : Load.None)];

    private List<int> NextToDrop() =>
        Furthest(i => _on[i] && IsUnderDropOut(i, _volts[i]), i => (-_volts[i] / _startings[i]!.DropOutVolts, 0));

    // Everything slides down from where the power became too much: first off is who is nearest to its drop-out voltage there.
    private List<int> FirstToLetGo()
    {
        double[]? volts = _circuit.VoltsAtCollapse(_rail, Drawing());
        return Furthest(i => _on[i],
            i => (volts is null ? _circuit.OhmsTo(i) : _startings[i]!.DropOutVolts / volts[i], _startings[i]!.DropOutVolts));
    }

    // Whoever comes on draws from what the others left: two that tie are not taken to start within the same instant.
    private List<int> NextToRise(Func<int, bool> candidate) =>
        [.. Furthest(candidate, i => (_volts[i] / _startings[i]!.TurnOnVolts, 0)).OrderBy(i => _names[i], StringComparer.Ordinal).Take(1)];

    private bool IsUnderDropOut(int device, double volts) => _startings[device] is Starting starting && volts < starting.DropOutVolts;

    private bool CanComeOn(int device)
    {
        _cancellationToken.ThrowIfCancellationRequested();
        Starting starting = _startings[device]!;
        if (_on[device] || _volts[device] < starting.TurnOnVolts) return false;
        Load[] others = Drawing();
        others[device] = _loads[device];

        // A device whose stable voltage lies under its turn-on voltage sinks to it and stays there.
        double settled = starting.HasSoftStart == true ? 0 : _circuit.VoltsWith(device, _loads[device], _rail, others);
        bool climbs = StartKernel.NeedsNoClimb(settled, starting) || _circuit.CanClimbFrom(starting.TurnOnVolts, device, _rail, others);
        _failsToClimb[device] |= !climbs;
        return climbs;
    }

    // The candidates of the highest rank: one, or all that tie.
    private List<int> Furthest(Func<int, bool> candidate, Func<int, (double First, double Second)> rank)
    {
        var best = new List<int>();
        for (int i = 0; i < _loads.Length; i++)
        {
            if (_startings[i] is null || !candidate(i)) continue;
            int order = best.Count == 0 ? 0 : rank(i).CompareTo(rank(best[0]));
            if (order > 0) best.Clear();
            if (order >= 0) best.Add(i);
        }

        return best;
    }
}
