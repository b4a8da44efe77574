using System;
using System.Collections.Generic;

namespace CamPower.Circuits;

/// <summary>Trees that span a graph, level by level: the order in which currents are summed and voltages handed on.</summary>
internal sealed class Forest
{
    private const int None = -1;
    private readonly int[] _start, _neighbors, _elements;

    /// <summary>Spans the graph, first from the given roots, then from any node not yet reached.</summary>
    internal Forest(int nodeCount, int[] from, int[] to, params int[] roots)
    {
        _start = new int[nodeCount + 1];
        foreach (int node in from) _start[node + 1]++;
        foreach (int node in to) _start[node + 1]++;
        for (int i = 0; i < nodeCount; i++) _start[i + 1] += _start[i];
        _neighbors = new int[2 * from.Length];
        _elements = new int[2 * from.Length];
        var next = (int[])_start.Clone();
        for (int e = 0; e < from.Length; e++)
        {
            Place(next[from[e]]++, to[e], e);
            Place(next[to[e]]++, from[e], e);
        }

        Order = new int[nodeCount];
        Parent = new int[nodeCount];
        Element = new int[nodeCount];
        Root = new int[nodeCount];
        Span(roots);
    }

    /// <summary>The nodes, parents before their children.</summary>
    internal int[] Order { get; }

    /// <summary>The parent of each node, or -1 for a root.</summary>
    internal int[] Parent { get; }

    /// <summary>The element between each node and its parent, or -1 for a root.</summary>
    internal int[] Element { get; }

    /// <summary>The root of each node's tree.</summary>
    internal int[] Root { get; }

    private void Place(int slot, int neighbor, int element)
    {
        _neighbors[slot] = neighbor;
        _elements[slot] = element;
    }

    private void Span(IReadOnlyCollection<int> roots)
    {
        var reached = new bool[Order.Length];
        int found = 0, done = 0;
        foreach (int root in roots) Reach(root, None, None, root);
        for (int node = 0; ; node++)
        {
            for (; done < found; done++) ReachNeighbors(Order[done]);
            if (node == Order.Length) break;
            Reach(node, None, None, node);
        }

        void ReachNeighbors(int node)
        {
            for (int p = _start[node]; p < _start[node + 1]; p++) Reach(_neighbors[p], node, _elements[p], Root[node]);
        }

        void Reach(int node, int parent, int element, int root)
        {
            if (reached[node]) return;
            reached[node] = true;
            Order[found++] = node;
            Parent[node] = parent;
            Element[node] = element;
            Root[node] = root;
        }
    }
}
