using System.Linq;

namespace CamPower.Circuits;

/// <summary>The two shapes of network for which it is proved that Newton's path descends to the operating point.</summary>
internal static class MeshShape
{
    /// <summary>Whether without its one source the network is two parts, and every load goes from the positive to the negative
    /// one.</summary>
    /// <remarks>The voltage that any load costs any other is then not negative, and without resistance components every
    /// load's current is convex and falls with its voltage: the equations are those of a convex map with an
    /// M-matrix as Jacobian. Source: <see cref="Sources.MonotoneNewton"/>.</remarks>
    internal static bool SpansTheSource(Circuit circuit)
    {
        if (circuit.SourceCount != 1) return false;
        PotentialGroups parts = Joined(circuit, withResistance: true);
        int plus = parts.RootOf(circuit.SourcePlus[0]), minus = parts.RootOf(circuit.SourceMinus[0]);
        return plus != minus
            && circuit.LoadPlus.All(node => parts.RootOf(node) == plus)
            && circuit.LoadMinus.All(node => parts.RootOf(node) == minus);
    }

    /// <summary>Whether the negative terminals of all loads and sources are at one voltage.</summary>
    /// <remarks>The Jacobian is then an M-matrix whatever the shares, and more current of a source means more voltage everywhere. Source:
    /// <see cref="Sources.MonotoneNewton"/>.</remarks>
    internal static bool SharesTheReturn(Circuit circuit)
    {
        PotentialGroups nodes = Joined(circuit, withResistance: false);
        int shared = nodes.RootOf(circuit.SourceMinus[0]);
        return circuit.LoadMinus.Concat(circuit.SourceMinus).All(node => nodes.RootOf(node) == shared);
    }

    private static PotentialGroups Joined(Circuit circuit, bool withResistance)
    {
        var groups = new PotentialGroups(circuit.NodeCount);
        for (int b = 0; b < circuit.BranchCount; b++)
        {
            if (withResistance || !(circuit.BranchOhms[b] > 0)) groups.TryJoin(circuit.BranchFrom[b], circuit.BranchTo[b], 0);
        }

        return groups;
    }
}
