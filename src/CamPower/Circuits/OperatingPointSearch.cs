using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Circuits;

/// <summary>Looks for the operating point of a network, and keeps the last one found as the place to go on from.</summary>
/// <remarks>
/// <para>The operating point is the end of the solution branch that starts at zero load. The search has three steps. First: Newton's
/// method from the voltages without load (<see cref="Sources.MonotoneNewton"/>). Second, where that fails and the failure proves nothing:
/// the loads rise from zero in steps, and each step is halved until it succeeds or is too small. Third, with several sources: those that
/// contradict themselves are switched. A source that cannot sink current contradicts itself where it delivers a negative current, or is
/// blocked although its voltage is above that of its terminals.</para>
/// <para>Switching ends: the voltages without load are above every solution where all sources share one return, loads replaced by their
/// tangents draw less than they do, and more current of a source only raises voltages. Elsewhere the source that was added first switches
/// first (<see cref="Sources.LeastIndexPivoting"/>).</para>
/// <para>With several sources the branch from zero load may end before the load is reached, and the voltages jump to a lower branch. Where
/// other sources deliver than without load, the branch is followed to find out.</para>
/// </remarks>
internal sealed class OperatingPointSearch
{
    private const int MostSourceChanges = 1000, MostSteps = 400;
    private const double FirstStep = 0.25, LeastStep = 1e-6;
    private const double SinkingAmperes = 1e-9, Higher = 1e-12;

    // Where the voltages at a fold are extrapolated from: this share of the load below it, and four times that.
    private const double BelowFold = 1e-8;

    private readonly Circuit _circuit;
    private readonly NetworkPlan _allDelivering;
    private readonly LoadShares _fullLoads;
    private NetworkPlan _plan;
    private LinearizedCircuit _solver;
    private bool[] _blocked;
    private double[] _volts;
    private int _iterations;

    // The point without load, once it has been asked for.
    private Point? _open;

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
    internal bool SourcesMaySwitch => _allDelivering.SourcesMaySwitch;

    /// <summary>Whether any load draws constant power.</summary>
    internal bool HasConstantPower => _circuit.Loads.Any(load => load.Watts > 0);

    /// <summary>The plan of the sources that deliver: another one whenever a source has switched.</summary>
    internal NetworkPlan Plan => _plan;

    /// <summary>Steps of Newton's method so far.</summary>
    internal int Iterations => _iterations;

    /// <summary>Which sources are blocked at the point last found.</summary>
    internal bool[] Blocked => _blocked;

    /// <summary>The loads at the point last looked for.</summary>
    internal LoadShares Loads { get; private set; }

    /// <summary>Voltage of each row at the point last found. [V]</summary>
    internal double[] Volts => _volts;

    /// <summary>Whether the operating point lies on another branch than the one that starts without load.</summary>
    internal bool IsReachedByJump { get; private set; }

    // The voltages are worked on in place; which sources are blocked is never changed but replaced.
    private Point Snapshot() => new(_plan, _solver, _blocked, (double[])_volts.Clone(), Loads);

    // A point is gone back to once: its voltages are worked on from then on.
    private void GoBackTo(Point point) =>
        (_plan, _solver, _blocked, _volts, Loads) = (point.Plan, point.Solver, point.Blocked, point.Volts, point.Loads);

    /// <summary>Looks for the operating point: on the branch from zero load where that reaches the load, otherwise the highest.</summary>
    internal bool TryOperate()
    {
        if (!TryFind(1)) return false;
        if (!SourcesMaySwitch || _blocked.SequenceEqual(_open!.Value.Blocked) || IsStableWithoutLoad()) return true;
        Point found = Snapshot();
        if (TryFind(0) && SolutionBranch.End(this, 0, upTo: 1) >= 1) return true;
        GoBackTo(found);
        IsReachedByJump = true;
        return true;
    }

    /// <summary>Looks for the highest operating point from nothing, with the constant-power components scaled.</summary>
    internal bool TryFind(double powerScale)
    {
        Loads = powerScale == 1 ? _fullLoads : NewLoads(powerScale, 1);
        if (SourcesMaySwitch ? TryDescend() : TrySettle(fresh: true)) return true;
        return !_allDelivering.IsConclusive(_circuit.Loads) && TryRaiseLoads(powerScale);
    }

    /// <summary>Goes on from the point last found to other scales of the shares; stays there where that fails.</summary>
    internal bool TryMove(double powerScale, double otherScale = 1) => TryOrStay(() =>
    {
        Loads = NewLoads(powerScale, otherScale);
        return TrySettle(fresh: false);
    });

    /// <summary>Goes on to a fold of those that deliver, where another source comes on so shortly before it that no point between was met;
    /// otherwise stays.</summary>
    /// <remarks>Near a fold the voltages change as the square root of the distance to it: at it they are twice those at a
    /// distance less those at four times the distance.</remarks>
    internal bool TryPass(double fold) => SourcesMaySwitch && TryOrStay(() =>
    {
        bool[] before = _blocked;
        if (!TryMove(fold * (1 - (4 * BelowFold)))) return false;
        NetworkState farther = State();
        if (!TryMove(fold * (1 - BelowFold))) return false;
        if (before.SequenceEqual(_blocked))
        {
            int[] contradictions = [.. Contradictions(State().TwiceLess(farther))];
            if (contradictions.Length == 0 || !TrySwitch(contradictions)) return false;
        }

        Loads = NewLoads(fold, 1);
        return TrySettle(fresh: false);
    });

    /// <summary>Rate of change of the voltages with the scale of the constant-power components, at the point last found.</summary>
    internal bool TryTangent(double[] voltsPerScale) => _solver.TryTangent(Loads, _volts, voltsPerScale);

    /// <summary>Every voltage and current at the point last found.</summary>
    internal NetworkState State() => _plan.Expand(Loads, _volts);

    // What an attempt that fails has done to the point last found is undone.
    private bool TryOrStay(Func<bool> attempt)
    {
        Point start = Snapshot();
        if (attempt()) return true;
        GoBackTo(start);
        return false;
    }

    // On the way from no load the voltages are higher, the loads smaller and no fewer sources deliver: all of it stiffer.
    private bool IsStableWithoutLoad() =>
        ((MeshSolver)_open!.Value.Plan.NewSolver()).TrySolveTangents(Loads, _volts, new double[_volts.Length]);

    private bool TryRaiseLoads(double powerScale)
    {
        if (!TryOpen()) return false;
        double reached = 0, step = FirstStep;
        bool hasMoved = true;
        for (int k = 0; k < MostSteps && step >= LeastStep; k++)
        {
            double next = Math.Min(1, reached + step);
            bool moves = TryMove(powerScale * next, next);
            if (moves && next >= 1) return true;
            if (moves) reached = next;

            // Where the last step was too large, a larger one is too.
            if (!moves) step /= 2;
            else if (hasMoved) step *= 2;
            hasMoved = moves;
        }

        return false;
    }

    // Goes to the voltages without load, and the sources that are blocked there.
    private bool TryOpen()
    {
        if (_open is Point open)
        {
            GoBackTo(open with { Volts = (double[])open.Volts.Clone() });
            return true;
        }

        Deliver();
        Loads = NewLoads(0, 0);
        if (!TrySettle(fresh: true, loaded: false)) return false;
        _open = Snapshot();
        return true;
    }

    private void Deliver()
    {
        _plan = _allDelivering;
        _solver = _plan.NewSolver();
        _blocked = new bool[_circuit.SourceCount];
    }

    // Without load the voltages that the solver starts from are the answer, whatever their sign.
    private bool TrySettle(bool fresh, bool loaded = true)
    {
        for (int change = 0; change < MostSourceChanges; change++)
        {
            if (fresh) _solver.OpenCircuit(_volts);
            if (loaded && !Newton.TryDescend(_solver, Loads, _volts, ref _iterations)) return false;
            if (!SourcesMaySwitch) return true;
            int[] contradictions = [.. Contradictions(State()).Take(1)];
            if (contradictions.Length == 0) return true;
            if (!TrySwitch(contradictions)) return false;
        }

        return false;
    }

    // From the voltages without load. Where the sources that deliver there still agree with the answer, no others come into it.
    private bool TryDescend()
    {
        LoadShares loads = Loads;
        if (!TryOpen()) return false;
        Loads = loads;
        double[] open = (double[])_volts.Clone();
        if (Newton.TryDescend(_solver, Loads, _volts, ref _iterations) && !Contradictions(State()).Any()) return true;

        Array.Copy(open, _volts, open.Length);
        double last = double.PositiveInfinity;
        for (int k = 0; k < MostSteps; k++)
        {
            _iterations++;
            double[] before = (double[])_volts.Clone();
            if (!TrySwitchedStep(before)) return false;
            double step = _volts.Select((volts, i) => Math.Abs(volts - before[i])).DefaultIfEmpty(0).Max();
            if (Newton.IsLast(step / _solver.ScaleVolts, last / _solver.ScaleVolts)) return !Contradictions(State()).Any();
            last = step;
        }

        return false;
    }

    // One step of Newton's method in which the loads are their tangents and the sources switch until none contradicts itself.
    private bool TrySwitchedStep(double[] before)
    {
        bool hasTriedAll = false;
        for (int change = 0; change < MostSourceChanges; change++)
        {
            if (!((MeshSolver)_solver).TrySolveTangents(Loads, before, _volts))
            {
                if (hasTriedAll) return false;
                hasTriedAll = true;
                Deliver();
                continue;
            }

            int[] contradictions = [.. Contradictions(((Mesh)_plan).ExpandTangents(Loads, before, _volts))];
            if (contradictions.Length == 0) return _volts.All(volts => volts > 0);
            if (!TrySwitch(change < _blocked.Length ? contradictions : [contradictions[0]])) return false;
        }

        return false;
    }

    private bool TrySwitch(int[] sources)
    {
        _blocked = (bool[])_blocked.Clone();
        foreach (int s in sources) _blocked[s] = !_blocked[s];
        Mesh? plan = Mesh.TryCreate(_circuit, _blocked);
        if (plan is null) return false;
        _plan = plan;
        _solver = plan.NewSolver();
        return true;
    }

    private IEnumerable<int> Contradictions(NetworkState state)
    {
        for (int s = 0; s < _circuit.SourceCount; s++)
        {
            if (_circuit.SourceMaySink[s]) continue;
            double across = state.NodeVolts[_circuit.SourcePlus[s]] - state.NodeVolts[_circuit.SourceMinus[s]];
            bool contradicts = _blocked[s]
                ? _circuit.SourceVolts[s] - across > Higher * _circuit.SourceVolts[s]
                : state.SourceAmperes[s] < -SinkingAmperes;
            if (contradicts) yield return s;
        }
    }

    private LoadShares NewLoads(double powerScale, double otherScale) =>
        new(_circuit.Loads, _plan.RowOf, _solver.Rows, powerScale, otherScale);

    private readonly record struct Point(NetworkPlan Plan, LinearizedCircuit Solver, bool[] Blocked, double[] Volts, LoadShares Loads);
}
