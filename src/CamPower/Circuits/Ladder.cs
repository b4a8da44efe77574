using System.Collections.Generic;

namespace CamPower.Circuits;

/// <summary>A radial network as a tree of loops: one source, and each positive conductor paired with the negative one that returns its
/// current.</summary>
internal sealed class Ladder : NetworkPlan
{
    private const int None = -1;
    private readonly Circuit _circuit;
    private readonly Forest _forest;
    private readonly LadderPoles _poles;
    private readonly List<Rung> _building = [];
    private readonly List<int> _plusNodes = [], _minusNodes = [];
    private readonly Rung[] _rungs;

    private Ladder(Circuit circuit, Forest forest, LadderPoles poles)
    {
        _circuit = circuit;
        _forest = forest;
        _poles = poles;
        RowOf = new int[circuit.Loads.Length];
        PlaceLoads(PlacePairs());
        _rungs = [.. _building];
    }

    internal override int[] RowOf { get; }

    /// <summary>The plan, or null where the network is not radial.</summary>
    internal static Ladder? TryCreate(Circuit circuit)
    {
        if (circuit.SourceCount != 1 || circuit.BranchCount != circuit.NodeCount - 2) return null;
        var forest = new Forest(circuit.NodeCount, circuit.BranchFrom, circuit.BranchTo, circuit.SourcePlus[0], circuit.SourceMinus[0]);
        LadderPoles? poles = LadderPoles.TryPair(circuit, forest);
        return poles is null ? null : new Ladder(circuit, forest, poles);
    }

    internal override NetworkPlan At(Circuit circuit) => TryCreate(circuit)!;

    internal override LinearizedCircuit NewSolver() => new RadialKernel(_rungs, _circuit.SourceVolts[0]);

    internal override bool IsConclusive(Load[] loads) => true;

    internal override bool SourcesMaySwitch => false;

    internal override NetworkState Expand(LoadShares loads, double[] volts)
    {
        var state = new NetworkState(_circuit);
        state.TakeLoads(loads, RowOf, volts);
        state.SourceAmperes[0] = SumCurrents(loads, volts, state.BranchAmperes);
        state.NodeVolts[_circuit.SourcePlus[0]] = _circuit.SourceVolts[0] - (_circuit.SourceOhms[0] * state.SourceAmperes[0]);
        HandOnVoltages(state);
        return state;
    }

    // Row 0 is the source's terminals; then one row for each pair of nodes that carries current, level by level.
    private int[] PlacePairs()
    {
        var rowOfPair = new int[_circuit.NodeCount];
        Place(None, _circuit.SourceOhms[0], None, None);
        foreach (int node in _forest.Order)
        {
            int plus = _poles.PlusOf(node), minus = _poles.MinusOf(node);
            if (plus == None && minus == None) continue;
            rowOfPair[node] = _building.Count;
            Place(rowOfPair[_forest.Parent[node]], OhmsAbove(plus) + OhmsAbove(minus), plus, minus);
        }

        return rowOfPair;
    }

    // A second load on the same pair of nodes gets a row of its own, no resistance away.
    private void PlaceLoads(int[] rowOfPair)
    {
        var taken = new bool[_building.Count];
        for (int k = 0; k < RowOf.Length; k++)
        {
            int row = rowOfPair[_poles.Leads(_circuit.LoadPlus[k], _circuit.LoadMinus[k])];
            RowOf[k] = taken[row] ? _building.Count : row;
            if (taken[row]) Place(row, 0, None, None);
            taken[row] = true;
        }
    }

    private void Place(int parent, double ohms, int plusNode, int minusNode)
    {
        _building.Add(new Rung(parent, ohms));
        _plusNodes.Add(plusNode);
        _minusNodes.Add(minusNode);
    }

    private double OhmsAbove(int node) => node == None ? 0 : _circuit.BranchOhms[_forest.Element[node]];

    // From the leaves to the source; gives the current of the source.
    private double SumCurrents(LoadShares loads, double[] volts, double[] branchAmperes)
    {
        var amperes = new double[_rungs.Length];
        for (int row = amperes.Length - 1; row >= 0; row--)
        {
            amperes[row] += loads.Rows[row].AmperesAt(volts[row]);
            if (row > 0) amperes[_rungs[row].Parent] += amperes[row];
            int plus = _plusNodes[row], minus = _minusNodes[row];
            if (plus != None) branchAmperes[_forest.Element[plus]] = amperes[row] * Sign(plus);
            if (minus != None) branchAmperes[_forest.Element[minus]] = -amperes[row] * Sign(minus);
        }

        return amperes[0];
    }

    // 1 where the branch above a node is described from its parent to it, otherwise -1.
    private int Sign(int node) => _circuit.BranchTo[_forest.Element[node]] == node ? 1 : -1;

    private void HandOnVoltages(NetworkState state)
    {
        double[] volts = state.NodeVolts;
        foreach (int node in _forest.Order)
        {
            int branch = _forest.Element[node];
            if (branch == None) continue;
            volts[node] = volts[_forest.Parent[node]] - (Sign(node) * state.BranchAmperes[branch] * _circuit.BranchOhms[branch]);
        }

        double reference = volts[_circuit.Reference];
        for (int i = 0; i < volts.Length; i++) volts[i] -= reference;
    }
}
