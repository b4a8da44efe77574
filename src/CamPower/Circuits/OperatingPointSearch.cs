using System;

namespace CamPower.Circuits;

/// <summary>Looks for the operating point of a network, and keeps the last one found as the place to go on from.</summary>
/// <remarks>
/// <para>The operating point is the end of the solution branch that starts at zero load. Newton's method from the
/// voltages without load finds it; where its failure proves nothing, the loads are raised from zero in steps that
/// halve until they succeed or are nothing.</para>
/// <para>A source cannot sink current. In the order in which the sources were described, the first whose state
/// contradicts itself (delivering, but less than nothing; blocked, but with more voltage than its terminals)
/// changes its state, until none does. Source: <see cref="Sources.LeastIndexPivoting"/>.</para>
/// </remarks>
internal sealed class OperatingPointSearch
{
    private const int MostSourceChanges = 1000, MostSteps = 400;
    private const double FirstStep = 0.25, LeastStep = 1e-6;
    private const double SinkingAmperes = 1e-9, Higher = 1e-12;

    private readonly Circuit _circuit;
    private readonly NetworkPlan _allDelivering;
    private readonly LoadShares _fullLoads;
    private NetworkPlan _plan;
    private LinearisedCircuit _solver;
    private bool[] _blocked;
    private double[] _volts;
    private int _iterations;

    internal OperatingPointSearch(Circuit circuit, NetworkPlan allDelivering)
    {
        _circuit = circuit;
        _allDelivering = _plan = allDelivering;
        _solver = allDelivering.NewSolver();
        _blocked = new bool[circuit.SourceCount];
        _volts = new double[_solver.Rows];
        _fullLoads = Loads = NewLoads(1, 1);
    }

    /// <summary>Whether a source may come on or be blocked as the loads change.</summary>
    internal bool HasSeveralSources => _circuit.SourceCount > 1;

    /// <summary>Steps of Newton's method so far.</summary>
    internal int Iterations => _iterations;

    /// <summary>Which sources are blocked at the point last found.</summary>
    internal bool[] Blocked => _blocked;

    /// <summary>The loads at the point last looked for.</summary>
    internal LoadShares Loads { get; private set; }

    /// <summary>Voltage of each row at the point last found. [V]</summary>
    internal double[] Volts => _volts;

    /// <summary>Looks for the operating point from nothing, with the constant-power shares scaled.</summary>
    internal bool TryFind(double powerScale)
    {
        Loads = powerScale == 1 ? _fullLoads : NewLoads(powerScale, 1);
        if (TrySettle(fresh: true)) return true;
        return !_allDelivering.IsConclusive(_circuit.Loads) && TryRaiseLoads(powerScale);
    }

    /// <summary>Goes on from the point last found to other scales of the shares; stays there where that fails.</summary>
    internal bool TryMove(double powerScale, double otherScale) => TryOrStay(() =>
    {
        Loads = NewLoads(powerScale, otherScale);
        return TrySettle(fresh: false);
    });

    /// <summary>Goes on to another scale of the constant-power shares, or finds it anew where another source comes on in between; stays where that fails.</summary>
    internal bool TryReach(double powerScale) => TryMove(powerScale, 1) || (HasSeveralSources && TryOrStay(() => TryFind(powerScale)));

    /// <summary>How fast the voltages change with the scale of the constant-power shares, at the point last found.</summary>
    internal bool TryTangent(double[] voltsPerScale) => _solver.TryTangent(Loads, _volts, voltsPerScale);

    /// <summary>Every voltage and current at the point last found.</summary>
    internal NetworkState State() => _plan.Expand(Loads, _volts);

    // What an attempt that fails has done to the point last found is undone.
    private bool TryOrStay(Func<bool> attempt)
    {
        (NetworkPlan plan, LinearisedCircuit solver, bool[] blocked, double[] volts, LoadShares loads) = (_plan, _solver, _blocked, _volts, Loads);
        _blocked = (bool[])blocked.Clone();
        _volts = (double[])volts.Clone();
        if (attempt()) return true;
        (_plan, _solver, _blocked, _volts, Loads) = (plan, solver, blocked, volts, loads);
        return false;
    }

    private bool TryRaiseLoads(double powerScale)
    {
        Restart();
        Loads = NewLoads(0, 0);
        if (!TrySettle(fresh: true, loaded: false)) return false;
        double reached = 0, step = FirstStep;
        for (int k = 0; k < MostSteps && step >= LeastStep; k++)
        {
            double next = Math.Min(1, reached + step);
            if (!TryMove(powerScale * next, next)) step /= 2;
            else if (next >= 1) return true;
            else (reached, step) = (next, 2 * step);
        }

        return false;
    }

    private void Restart()
    {
        _plan = _allDelivering;
        _solver = _plan.NewSolver();
        Array.Clear(_blocked, 0, _blocked.Length);
    }

    // Without load the voltages that the solver starts from are the answer, whatever their sign.
    private bool TrySettle(bool fresh, bool loaded = true)
    {
        for (int change = 0; change < MostSourceChanges; change++)
        {
            if (fresh) _solver.OpenCircuit(_volts);
            if (loaded && !Newton.TryDescend(_solver, Loads, _volts, ref _iterations)) return false;
            int contradiction = FirstContradiction();
            if (contradiction < 0) return true;
            _blocked[contradiction] = !_blocked[contradiction];
            Mesh? plan = Mesh.TryCreate(_circuit, _blocked);
            if (plan is null) return false;
            _plan = plan;
            _solver = plan.NewSolver();
        }

        return false;
    }

    private int FirstContradiction()
    {
        if (!HasSeveralSources) return -1;
        NetworkState state = State();
        for (int s = 0; s < _circuit.SourceCount; s++)
        {
            double across = state.NodeVolts[_circuit.SourcePlus[s]] - state.NodeVolts[_circuit.SourceMinus[s]];
            bool contradicts = _blocked[s]
                ? _circuit.SourceVolts[s] - across > Higher * _circuit.SourceVolts[s]
                : state.SourceAmperes[s] < -SinkingAmperes;
            if (contradicts) return s;
        }

        return -1;
    }

    private LoadShares NewLoads(double powerScale, double otherScale) =>
        new(_circuit.Loads, _plan.RowOf, _solver.Rows, powerScale, otherScale);
}
