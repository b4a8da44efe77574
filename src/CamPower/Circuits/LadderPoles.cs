using System.Linq;

namespace CamPower.Circuits;

/// <summary>Which negative node returns the current of which positive one, in a network that is radial.</summary>
/// <remarks>
/// One pole may be a single node that all loads share; otherwise the two trees must match pair by pair from the
/// loads to the source. Nodes that no load lies behind carry no current and have no partner.
/// </remarks>
internal sealed class LadderPoles
{
    private const int None = -1;
    private readonly Forest _forest;
    private readonly int _plusRoot, _minusRoot;
    private readonly int[] _partner;
    private bool _leadsByMinus;

    private LadderPoles(Forest forest, int plusRoot, int minusRoot)
    {
        _forest = forest;
        _plusRoot = plusRoot;
        _minusRoot = minusRoot;
        _partner = new int[forest.Order.Length];
        for (int i = 0; i < _partner.Length; i++) _partner[i] = None;
    }

    /// <summary>The pairs, or null where the network is not radial.</summary>
    internal static LadderPoles? TryPair(Circuit circuit, Forest forest)
    {
        var poles = new LadderPoles(forest, circuit.SourcePlus[0], circuit.SourceMinus[0]);
        bool spanned = Enumerable.Range(0, circuit.Loads.Length).All(k =>
            forest.Root[circuit.LoadPlus[k]] == poles._plusRoot && forest.Root[circuit.LoadMinus[k]] == poles._minusRoot);
        return spanned && poles.TryPairAll(circuit) ? poles : null;
    }

    /// <summary>The node of a load, or of a pair, that stands for both.</summary>
    internal int Leads(int plus, int minus) => _leadsByMinus ? minus : plus;

    /// <summary>The positive node below the conductor that this node's row has, or -1.</summary>
    internal int PlusOf(int node) => !_leadsByMinus && IsPaired(node, _plusRoot) ? node : None;

    /// <summary>The negative node below the conductor that this node's row has, or -1.</summary>
    internal int MinusOf(int node)
    {
        if (_leadsByMinus) return IsPaired(node, _minusRoot) ? node : None;
        return IsPaired(node, _plusRoot) && _partner[node] != _minusRoot ? _partner[node] : None;
    }

    private bool IsPaired(int node, int root) => node != root && _forest.Root[node] == root && _partner[node] != None;

    private bool TryPairAll(Circuit circuit)
    {
        if (circuit.LoadMinus.All(n => n == _minusRoot)) return Share(circuit.LoadPlus, _plusRoot, _minusRoot);
        _leadsByMinus = circuit.LoadPlus.All(p => p == _plusRoot);
        if (_leadsByMinus) return Share(circuit.LoadMinus, _minusRoot, _plusRoot);

        for (int k = 0; k < circuit.Loads.Length; k++)
        {
            if (!TryPair(circuit.LoadPlus[k], circuit.LoadMinus[k])) return false;
        }

        for (int i = _forest.Order.Length - 1; i >= 0; i--)
        {
            int node = _forest.Order[i];
            if (IsPaired(node, _plusRoot) && !TryPair(_forest.Parent[node], _forest.Parent[_partner[node]])) return false;
        }

        return true;
    }

    // All loads share one node of this pole: every node between them and the source is its partner.
    private bool Share(int[] loadNodes, int root, int shared)
    {
        foreach (int node in loadNodes)
        {
            for (int i = node; i != None && _partner[i] == None; i = _forest.Parent[i]) _partner[i] = shared;
        }

        _partner[root] = shared;
        return true;
    }

    private bool TryPair(int plus, int minus)
    {
        if (minus == None || (plus == _plusRoot) != (minus == _minusRoot)) return false;
        if (_partner[plus] == None && _partner[minus] == None)
        {
            _partner[plus] = minus;
            _partner[minus] = plus;
        }

        return _partner[plus] == minus && _partner[minus] == plus;
    }
}
