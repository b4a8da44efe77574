using System;

namespace CamPower.Circuits;

/// <summary>An order of elimination that keeps a sparse symmetric factor sparse: always the node with the fewest neighbors next.</summary>
/// <remarks>
/// Approximate minimum degree on the quotient graph: an eliminated node becomes an element, the clique of its
/// neighbors, and swallows the elements it touched. After Amestoy, Davis and Duff, "An approximate minimum degree
/// ordering algorithm", SIAM J. Matrix Anal. Appl. 17 (1996), without its merging of indistinguishable nodes. Nodes
/// of very many neighbors come last, for they would be looked at again after each of them.
/// </remarks>
internal sealed class MinimumDegree
{
    private const int None = -1;

    // Of each live node: its segment of _lists holds first the elements, then the nodes, that it touches.
    private readonly int[] _start, _lists, _elementCount, _nodeCount;
    private readonly int[][] _members;
    private readonly bool[] _swallowed, _inPivot;
    private readonly int[] _outside, _stamp, _scratch;

    // Live nodes in doubly linked lists by degree.
    private readonly int[] _first, _next, _previous, _degree;

    private MinimumDegree(int[] start, int[] neighbors)
    {
        int count = start.Length - 1;
        _start = start;
        _lists = (int[])neighbors.Clone();
        _elementCount = new int[count];
        _nodeCount = new int[count];
        _members = new int[count][];
        _swallowed = new bool[count];
        _inPivot = new bool[count];
        _outside = new int[count];
        _stamp = new int[count];
        _scratch = new int[count];
        _first = new int[Math.Max(1, count)];
        _next = new int[count];
        _previous = new int[count];
        _degree = new int[count];
    }

    /// <summary>The nodes in order of elimination.</summary>
    /// <param name="start">Where each node's neighbors start in <paramref name="neighbors"/>, and where the last ends.</param>
    /// <param name="neighbors">Each node's neighbors, each once, never the node itself.</param>
    internal static int[] Order(int[] start, int[] neighbors) => new MinimumDegree(start, neighbors).Run();

    private int[] Run()
    {
        int count = _nodeCount.Length;
        var order = new int[count];
        int live = Prepare(order);
        int least = 0;
        for (int k = 0; k < live; k++)
        {
            while (_first[least] == None) least++;
            int pivot = _first[least];
            Unlink(pivot);
            order[k] = pivot;
            int lowest = Eliminate(pivot, live - k - 1);
            least = Math.Min(least, lowest);
        }

        return order;
    }

    // Puts nodes of very many neighbors last, the others into the lists by degree; gives the number of the others.
    private int Prepare(int[] order)
    {
        int count = _nodeCount.Length, last = count;
        double most = Math.Max(16, 10 * Math.Sqrt(count));
        var dense = new bool[count];
        for (int i = count - 1; i >= 0; i--)
        {
            dense[i] = _start[i + 1] - _start[i] > most;
            if (dense[i]) order[--last] = i;
        }

        for (int d = 0; d < _first.Length; d++) _first[d] = None;
        for (int i = count - 1; i >= 0; i--)
        {
            if (dense[i]) continue;
            int kept = _start[i];
            for (int p = _start[i]; p < _start[i + 1]; p++)
            {
                if (!dense[_lists[p]]) _lists[kept++] = _lists[p];
            }

            _nodeCount[i] = kept - _start[i];
            Link(i, _nodeCount[i]);
        }

        return last;
    }

    // Makes the pivot an element and brings its neighbors up to date; gives the least degree among them.
    private int Eliminate(int pivot, int remaining)
    {
        int[] members = Neighbors(pivot);
        _members[pivot] = members;
        foreach (int i in members) _inPivot[i] = true;
        CountOutside(pivot, members);
        int least = int.MaxValue;
        foreach (int i in members)
        {
            int degree = Math.Min(remaining - 1, Update(i, pivot, members.Length - 1));
            Unlink(i);
            Link(i, degree);
            least = Math.Min(least, degree);
        }

        foreach (int i in members) _inPivot[i] = false;
        return least;
    }

    private int[] Neighbors(int pivot)
    {
        int found = 0;
        _inPivot[pivot] = true;
        int elementsEnd = _start[pivot] + _elementCount[pivot];
        for (int p = _start[pivot]; p < elementsEnd; p++)
        {
            int element = _lists[p];
            if (_swallowed[element]) continue;
            foreach (int i in _members[element]) found = Add(i, found);
            _swallowed[element] = true;
        }

        for (int p = elementsEnd; p < elementsEnd + _nodeCount[pivot]; p++) found = Add(_lists[p], found);
        _inPivot[pivot] = false;
        var members = new int[found];
        Array.Copy(_scratch, members, found);
        foreach (int i in members) _inPivot[i] = false;
        return members;
    }

    private int Add(int node, int found)
    {
        if (_inPivot[node]) return found;
        _inPivot[node] = true;
        _scratch[found] = node;
        return found + 1;
    }

    // For each element that a member touches: how many of its nodes are not in the pivot's.
    private void CountOutside(int pivot, int[] members)
    {
        foreach (int i in members)
        {
            for (int p = _start[i]; p < _start[i] + _elementCount[i]; p++)
            {
                int element = _lists[p];
                if (_swallowed[element]) continue;
                if (_stamp[element] != pivot + 1)
                {
                    _stamp[element] = pivot + 1;
                    _outside[element] = _members[element].Length;
                }

                _outside[element]--;
            }
        }
    }

    // Rewrites the list of a neighbor of the pivot; gives a bound of its new degree.
    private int Update(int node, int pivot, int others)
    {
        int start = _start[node], elementsEnd = start + _elementCount[node], end = elementsEnd + _nodeCount[node];
        int bound = others, elements = start, kept = 0;
        for (int p = elementsEnd; p < end; p++)
        {
            int neighbor = _lists[p];
            if (neighbor != pivot && !_inPivot[neighbor]) _scratch[kept++] = neighbor;
        }

        for (int p = start; p < elementsEnd; p++)
        {
            int element = _lists[p];
            if (_swallowed[element]) continue;
            if (_outside[element] == 0) { _swallowed[element] = true; continue; }
            bound += _outside[element];
            _lists[elements++] = element;
        }

        // There is room: the pivot was a neighbor, or an element that it swallowed was.
        _lists[elements++] = pivot;
        Array.Copy(_scratch, 0, _lists, elements, kept);
        _elementCount[node] = elements - start;
        _nodeCount[node] = kept;
        return Math.Min(bound + kept, _degree[node] + others);
    }

    private void Link(int node, int degree)
    {
        _degree[node] = degree;
        _previous[node] = None;
        _next[node] = _first[degree];
        if (_next[node] != None) _previous[_next[node]] = node;
        _first[degree] = node;
    }

    private void Unlink(int node)
    {
        if (_previous[node] == None) _first[_degree[node]] = _next[node];
        else _next[_previous[node]] = _next[node];
        if (_next[node] != None) _previous[_next[node]] = _previous[node];
    }
}
