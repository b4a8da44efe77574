using System.Collections.Generic;

namespace CamPower.Circuits;

/// <summary>The ideal sources and the branches of no resistance: trees along which their currents are summed.</summary>
internal sealed class MeshIdealElements
{
    private readonly Forest _forest;
    private readonly List<int> _plus = [], _minus = [], _source = [], _branch = [];

    /// <summary>Collects the elements and joins their nodes in <paramref name="groups"/>.</summary>
    internal MeshIdealElements(Circuit circuit, bool[] blocked, PotentialGroups groups)
    {
        for (int s = 0; s < circuit.SourceCount; s++)
        {
            if (!blocked[s] && !(circuit.SourceOhms[s] > 0))
            {
                Add(circuit.SourcePlus[s], circuit.SourceMinus[s], circuit.SourceVolts[s], s, -1);
            }
        }

        for (int b = 0; b < circuit.BranchCount; b++)
        {
            if (!(circuit.BranchOhms[b] > 0)) Add(circuit.BranchFrom[b], circuit.BranchTo[b], 0, -1, b);
        }

        _forest = new Forest(circuit.NodeCount, [.. _plus], [.. _minus]);

        void Add(int plus, int minus, double volts, int source, int branch)
        {
            groups.TryJoin(plus, minus, volts);
            _plus.Add(plus);
            _minus.Add(minus);
            _source.Add(source);
            _branch.Add(branch);
        }
    }

    /// <summary>Fills in their currents from the current that the other elements take from each node, which it uses up.</summary>
    internal void FillCurrents(double[] needed, NetworkState state)
    {
        for (int i = _forest.Order.Length - 1; i >= 0; i--)
        {
            int node = _forest.Order[i], element = _forest.Element[node];
            if (element < 0) continue;
            needed[_forest.Parent[node]] += needed[node];

            // A source delivers at its positive node, a branch at its second.
            bool atPlus = _plus[element] == node;
            if (_source[element] >= 0) state.SourceAmperes[_source[element]] = atPlus ? needed[node] : -needed[node];
            else state.BranchAmperes[_branch[element]] = atPlus ? -needed[node] : needed[node];
        }
    }
}
