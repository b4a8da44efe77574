using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;

namespace CamPower.Assessment;

/// <summary>Which devices stay up, where turn-on and drop-out decide it.</summary>
/// <remarks>
/// One event at a time, in a fixed order: the device furthest under its drop-out voltage goes off first; when none
/// is under it, the one furthest above its turn-on voltage comes on. Without an operating point the device at the
/// end of the most resistance goes off. When a state comes back the sequence repeats for ever: who is on in all of
/// its states is up, who is on in some is restarting; where one of the states has no operating point, everything there
/// loses its voltage in it. A device that does not declare the two voltages is always on.
/// </remarks>
internal sealed class OnOffSequence
{
    private readonly FeedCircuit _circuit;
    private readonly Load[] _loads;
    private readonly Starting?[] _startings;
    private readonly bool[] _on, _failsToClimb;
    private readonly double[] _volts;

    internal OnOffSequence(FeedCircuit circuit, Load[] loads, bool fromOff)
    {
        _circuit = circuit;
        _loads = loads;
        _startings = [.. circuit.Group.Devices.Select(d => d.Device.Model.Starting)];
        _on = [.. _startings.Select(s => s is null || !fromOff)];
        _failsToClimb = new bool[loads.Length];
        _volts = new double[loads.Length];
        States = new DeviceState[loads.Length];
        Volts = new double[loads.Length];
        Run();
    }

    /// <summary>What becomes of each device.</summary>
    internal DeviceState[] States { get; }

    /// <summary>For each device that is up the lowest voltage that it sees. [V]</summary>
    internal double[] Volts { get; }

    private void Run()
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var history = new List<(bool[] On, double[] Volts)>();
        while (true)
        {
            string key = string.Concat(_on.Select(on => on ? '1' : '0'));
            bool repeated = seen.TryGetValue(key, out int first);
            if (!repeated) seen.Add(key, history.Count);
            if (repeated)
            {
                Conclude(history.Skip(first).ToList());
                return;
            }

            bool solved = _circuit.TrySolve(SupplyLevel.Lowest, Drawing(), _volts);
            history.Add(([.. _on], [.. _volts]));
            int? next = solved ? NextToDrop() ?? NextToRise() : FarthestOn();
            if (next is int device) _on[device] = !_on[device];
            else if (solved) break;
            else
            {
                for (int i = 0; i < States.Length; i++) States[i] = DeviceState.NoOperatingPoint;
                return;
            }
        }

        Conclude([history[history.Count - 1]]);
    }

    private void Conclude(List<(bool[] On, double[] Volts)> recurring)
    {
        for (int i = 0; i < States.Length; i++)
        {
            int device = i;
            if (recurring.TrueForAll(state => state.On[device] && state.Volts[device] > RunKernel.NoOperatingPoint))
            {
                States[i] = DeviceState.Up;
                Volts[i] = recurring.Min(state => state.Volts[device]);
            }
            else
            {
                bool tries = _failsToClimb[i] || recurring.Exists(state => state.On[device]);
                States[i] = tries ? DeviceState.Restarting : DeviceState.NeverUp;
            }
        }
    }

    private Load[] Drawing() => [.. _loads.Select((load, i) => _on[i] ? load : Load.None)];

    private int? NextToDrop() => Extreme(i => _on[i] && _volts[i] < _startings[i]!.DropOutVolts, i => -_volts[i] / _startings[i]!.DropOutVolts);

    private int? NextToRise() => Extreme(CanComeOn, i => _volts[i] / _startings[i]!.TurnOnVolts);

    private int? FarthestOn() => Extreme(i => _on[i], _circuit.OhmsTo);

    private bool CanComeOn(int device)
    {
        Starting starting = _startings[device]!;
        if (_on[device] || _volts[device] < starting.TurnOnVolts) return false;
        if (starting.SoftStart == SoftStart.Yes) return true;
        Load[] others = Drawing();
        others[device] = _loads[device];

        // A device whose stable voltage lies under its turn-on voltage sinks to it and stays there.
        double settled = _circuit.VoltsWith(device, _loads[device], SupplyLevel.Lowest, others);
        bool climbs = (settled > 0 && settled <= starting.TurnOnVolts) || _circuit.CanClimbFrom(starting.TurnOnVolts, device, SupplyLevel.Lowest, others);
        _failsToClimb[device] |= !climbs;
        return climbs;
    }

    private int? Extreme(Func<int, bool> candidate, Func<int, double> rank)
    {
        int? best = null;
        for (int i = 0; i < _loads.Length; i++)
        {
            if (_startings[i] is not null && candidate(i) && (best is not int so || rank(i) > rank(so))) best = i;
        }

        return best;
    }
}
