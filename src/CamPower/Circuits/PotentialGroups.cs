namespace CamPower.Circuits;

/// <summary>Nodes whose voltages differ by known amounts, joined step by step: ideal sources and branches of no resistance.</summary>
internal sealed class PotentialGroups
{
    private readonly int[] _parent;
    private readonly double[] _above;

    internal PotentialGroups(int nodeCount)
    {
        _parent = new int[nodeCount];
        _above = new double[nodeCount];
        for (int i = 0; i < nodeCount; i++) _parent[i] = i;
    }

    /// <summary>The node that stands for the group of a node.</summary>
    internal int RootOf(int node)
    {
        int root = node;
        double above = 0;
        for (; _parent[root] != root; root = _parent[root]) above += _above[root];
        while (_parent[node] != root && node != root)
        {
            int next = _parent[node];
            double here = _above[node];
            _parent[node] = root;
            _above[node] = above;
            above -= here;
            node = next;
        }

        return root;
    }

    /// <summary>Voltage of a node above the node that represents its group. [V]</summary>
    internal double Above(int node) => RootOf(node) == node ? 0 : _above[node];

    /// <summary>Says that one node lies above another by a voltage; false where the two were joined already.</summary>
    internal bool TryJoin(int node, int other, double volts)
    {
        int root = RootOf(node), otherRoot = RootOf(other);
        if (root == otherRoot) return false;
        _above[root] = Above(other) + volts - Above(node);
        _parent[root] = otherRoot;
        return true;
    }
}
