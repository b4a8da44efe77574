using System.Collections.Generic;
using System.Linq;

namespace CamPower.Circuits;

/// <summary>A network of any shape, ready for nodal analysis: nodes that ideal elements join are one unknown.</summary>
/// <remarks>
/// Kirchhoff's current law at each group of nodes, with the voltage of the reference given. Ideal sources and branches
/// of no resistance fix differences of voltage, so they only shape the groups, and their currents follow
/// from what the other elements bring to their nodes. Source: <see cref="Sources.Kirchhoff"/>.
/// </remarks>
internal sealed class Mesh : NetworkPlan
{
    private const int None = -1;
    private readonly Circuit _circuit;
    private readonly bool[] _blocked;
    private readonly int[] _unknown;
    private readonly double[] _above;
    private readonly MeshIdealElements _ideal;
    private readonly MeshShape _shape;

    // Pattern and shape do not hang on the voltages: worked out once, and most of the work.
    private Mesh(Circuit circuit, bool[] blocked, PotentialGroups groups, MeshIdealElements ideal, SparsePattern? known, MeshShape shape)
    {
        _circuit = circuit;
        _blocked = (bool[])blocked.Clone();
        _ideal = ideal;
        _above = new double[circuit.NodeCount];
        _unknown = Unknowns(groups, out int count);

        var first = new List<int>();
        var second = new List<int>();
        int[] branchPair = Pairs(circuit.BranchFrom, circuit.BranchTo, b => circuit.BranchOhms[b] > 0);
        int[] sourcePair = Pairs(circuit.SourcePlus, circuit.SourceMinus, s => !blocked[s] && circuit.SourceOhms[s] > 0);
        int[] loadPair = Pairs(circuit.LoadPlus, circuit.LoadMinus, _ => true);
        Pattern = known ?? new SparsePattern(count, [.. first], [.. second]);
        for (int i = 0; i < _unknown.Length; i++) _unknown[i] = PlaceOf(_unknown[i]);

        Diagonal = new double[count];
        Entries = new double[Pattern.Rows.Length];
        Injected = new double[count];
        StampBranches([.. branchPair.Select(EntryOf)]);
        StampSources([.. sourcePair.Select(EntryOf)]);
        RowOf = [.. Enumerable.Range(0, circuit.Loads.Length)];
        LoadPlus = [.. circuit.LoadPlus.Select(node => _unknown[node])];
        LoadMinus = [.. circuit.LoadMinus.Select(node => _unknown[node])];
        LoadAbove = [.. RowOf.Select(k => _above[circuit.LoadPlus[k]] - _above[circuit.LoadMinus[k]])];
        LoadEntry = [.. loadPair.Select(EntryOf)];
        _shape = shape;
        SourcesMaySwitch = circuit.SourceCount > 1 && !circuit.SourceMaySink.All(maySink => maySink) && !shape.SourcesAreApart;

        int[] Pairs(int[] from, int[] to, System.Func<int, bool> counts)
        {
            var pairs = new int[from.Length];
            for (int e = 0; e < from.Length; e++)
            {
                int a = _unknown[from[e]], b = _unknown[to[e]];
                bool joins = counts(e) && a != None && b != None && a != b;
                pairs[e] = joins ? first.Count : None;
                if (!joins) continue;
                first.Add(a);
                second.Add(b);
            }

            return pairs;
        }

        int PlaceOf(int unknown) => unknown == None ? None : Pattern.PlaceOf[unknown];
        int EntryOf(int pair) => pair == None ? None : Pattern.EntryOf[pair];
    }

    internal override int[] RowOf { get; }

    internal SparsePattern Pattern { get; }

    /// <summary>Diagonal of the conductance matrix, without loads, in the order of elimination. [S]</summary>
    internal double[] Diagonal { get; }

    /// <summary>Its entries above the diagonal. [S]</summary>
    internal double[] Entries { get; }

    /// <summary>Current that sources bring to each unknown. [A]</summary>
    internal double[] Injected { get; }

    /// <summary>The unknown at each load's positive node, or -1.</summary>
    internal int[] LoadPlus { get; }

    /// <summary>The unknown at each load's negative node, or -1.</summary>
    internal int[] LoadMinus { get; }

    /// <summary>What each load has besides the difference of its unknowns. [V]</summary>
    internal double[] LoadAbove { get; }

    /// <summary>The entry above the diagonal between each load's unknowns, or -1.</summary>
    internal int[] LoadEntry { get; }

    internal bool StartsFlat => _shape.SpansTheSources;

    internal double HighestSourceVolts => _circuit.SourceVolts.Max();

    /// <summary>The plan with some sources left out, or null where the network then falls apart.</summary>
    internal static Mesh? TryCreate(Circuit circuit, bool[] blocked)
    {
        var together = new PotentialGroups(circuit.NodeCount);
        for (int b = 0; b < circuit.BranchCount; b++) together.TryJoin(circuit.BranchFrom[b], circuit.BranchTo[b], 0);
        for (int s = 0; s < circuit.SourceCount; s++)
        {
            if (!blocked[s]) together.TryJoin(circuit.SourcePlus[s], circuit.SourceMinus[s], 0);
        }

        int reference = together.RootOf(circuit.Reference);
        for (int node = 0; node < circuit.NodeCount; node++)
        {
            if (together.RootOf(node) != reference) return null;
        }

        return Of(circuit, blocked, known: null, new MeshShape(circuit));
    }

    internal override bool SourcesMaySwitch { get; }

    internal override NetworkPlan At(Circuit circuit) => Of(circuit, _blocked, Pattern, _shape);

    private static Mesh Of(Circuit circuit, bool[] blocked, SparsePattern? known, MeshShape shape)
    {
        var groups = new PotentialGroups(circuit.NodeCount);
        return new Mesh(circuit, blocked, groups, new MeshIdealElements(circuit, blocked, groups), known, shape);
    }

    internal override LinearizedCircuit NewSolver() => new MeshSolver(this);

    internal override bool IsConclusive(Load[] loads) =>
        _shape.SharesTheReturn || (_shape.SpansTheSources && loads.All(load => !(load.Siemens > 0)));

    internal override NetworkState Expand(LoadShares loads, double[] volts)
    {
        var state = new NetworkState(_circuit);
        state.TakeLoads(loads, RowOf, volts);
        return Expanded(state);
    }

    /// <summary>The same for loads that are their tangents at some voltages.</summary>
    internal NetworkState ExpandTangents(LoadShares loads, double[] tangentsAt, double[] volts)
    {
        var state = new NetworkState(_circuit);
        for (int k = 0; k < volts.Length; k++)
        {
            LoadRow load = loads.Rows[k];
            state.LoadVolts[k] = volts[k];
            state.LoadAmperes[k] = load.AmperesAt(tangentsAt[k]) + (load.SlopeAt(tangentsAt[k]) * (volts[k] - tangentsAt[k]));
        }

        return Expanded(state);
    }

    private NetworkState Expanded(NetworkState state)
    {
        var unknowns = new double[Pattern.Count];
        new MeshSolver(this).SolveFor(state.LoadAmperes, unknowns);
        double[] nodeVolts = state.NodeVolts;
        for (int node = 0; node < nodeVolts.Length; node++)
        {
            nodeVolts[node] = _above[node] + (_unknown[node] == None ? 0 : unknowns[_unknown[node]]);
        }

        FillCurrents(state);
        return state;
    }

    private void FillCurrents(NetworkState state)
    {
        var needed = new double[_circuit.NodeCount];
        for (int b = 0; b < _circuit.BranchCount; b++)
        {
            if (!(_circuit.BranchOhms[b] > 0)) continue;
            double amperes = (state.NodeVolts[_circuit.BranchFrom[b]] - state.NodeVolts[_circuit.BranchTo[b]]) / _circuit.BranchOhms[b];
            state.BranchAmperes[b] = amperes;
            needed[_circuit.BranchFrom[b]] += amperes;
            needed[_circuit.BranchTo[b]] -= amperes;
        }

        for (int s = 0; s < _circuit.SourceCount; s++)
        {
            if (_blocked[s] || !(_circuit.SourceOhms[s] > 0)) continue;
            double across = state.NodeVolts[_circuit.SourcePlus[s]] - state.NodeVolts[_circuit.SourceMinus[s]];
            double amperes = (_circuit.SourceVolts[s] - across) / _circuit.SourceOhms[s];
            state.SourceAmperes[s] = amperes;
            needed[_circuit.SourcePlus[s]] -= amperes;
            needed[_circuit.SourceMinus[s]] += amperes;
        }

        for (int k = 0; k < _circuit.Loads.Length; k++)
        {
            needed[_circuit.LoadPlus[k]] += state.LoadAmperes[k];
            needed[_circuit.LoadMinus[k]] -= state.LoadAmperes[k];
        }

        _ideal.FillCurrents(needed, state);
    }

    // One unknown for each group of nodes but the reference's, whose voltage is known.
    private int[] Unknowns(PotentialGroups groups, out int count)
    {
        var ofRoot = new int[_circuit.NodeCount];
        int reference = groups.RootOf(_circuit.Reference);
        double referenceAbove = groups.Above(_circuit.Reference);
        count = 0;
        for (int node = 0; node < ofRoot.Length; node++)
        {
            if (groups.RootOf(node) == node) ofRoot[node] = node == reference ? None : count++;
        }

        var unknown = new int[ofRoot.Length];
        for (int node = 0; node < unknown.Length; node++)
        {
            unknown[node] = ofRoot[groups.RootOf(node)];
            _above[node] = groups.Above(node) - (unknown[node] == None ? referenceAbove : 0);
        }

        return unknown;
    }

    private void StampBranches(int[] entries)
    {
        for (int b = 0; b < entries.Length; b++)
        {
            if (!(_circuit.BranchOhms[b] > 0)) continue;
            Stamp(_circuit.BranchFrom[b], _circuit.BranchTo[b], entries[b], 1 / _circuit.BranchOhms[b], 0);
        }
    }

    private void StampSources(int[] entries)
    {
        for (int s = 0; s < entries.Length; s++)
        {
            if (_blocked[s] || !(_circuit.SourceOhms[s] > 0)) continue;
            Stamp(_circuit.SourcePlus[s], _circuit.SourceMinus[s], entries[s], 1 / _circuit.SourceOhms[s], _circuit.SourceVolts[s]);
        }
    }

    // A conductance, behind a source voltage, from one node to the other.
    private void Stamp(int plus, int minus, int entry, double siemens, double sourceVolts)
    {
        int a = _unknown[plus], b = _unknown[minus];
        if (a == b) return;
        double amperes = siemens * (sourceVolts - (_above[plus] - _above[minus]));
        if (a != None)
        {
            Diagonal[a] += siemens;
            Injected[a] += amperes;
        }

        if (b != None)
        {
            Diagonal[b] += siemens;
            Injected[b] -= amperes;
        }

        if (entry != None) Entries[entry] -= siemens;
    }
}
