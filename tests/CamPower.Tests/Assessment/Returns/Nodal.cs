using System;
using System.Collections.Generic;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>Nodal equations of resistances and currents, by elimination: what a student would write down. The node "0" is at 0 V.</summary>
internal sealed class Nodal
{
    private readonly Dictionary<string, int> _index = new(StringComparer.Ordinal);
    private readonly List<(int From, int To, double Ohms)> _resistances = [];
    private readonly List<(int Node, double Amperes)> _currents = [];

    internal Nodal Resistance(string from, string to, double ohms)
    {
        _resistances.Add((At(from), At(to), ohms));
        return this;
    }

    /// <summary>A current that goes in at one node and comes out at another.</summary>
    internal Nodal Current(double amperes, string into, string outOf = "0")
    {
        _currents.Add((At(into), amperes));
        _currents.Add((At(outOf), -amperes));
        return this;
    }

    internal Func<string, double> Solve()
    {
        int n = _index.Count;
        var rows = new double[n, n + 1];
        foreach ((int from, int to, double ohms) in _resistances)
        {
            Add(from, from, 1 / ohms);
            Add(to, to, 1 / ohms);
            Add(from, to, -1 / ohms);
            Add(to, from, -1 / ohms);
        }

        foreach ((int node, double amperes) in _currents) Add(node, n, amperes);
        for (int pivot = 0; pivot < n; pivot++)
        {
            for (int row = 0; row < n; row++)
            {
                double factor = row == pivot ? 0 : rows[row, pivot] / rows[pivot, pivot];
                for (int column = pivot; factor != 0 && column <= n; column++) rows[row, column] -= factor * rows[pivot, column];
            }
        }

        return node => node == "0" ? 0 : rows[_index[node], n] / rows[_index[node], _index[node]];

        void Add(int row, int column, double value)
        {
            if (row >= 0 && column >= 0) rows[row, column] += value;
        }
    }

    private int At(string node)
    {
        if (node == "0") return -1;
        _index.TryAdd(node, _index.Count);
        return _index[node];
    }
}
