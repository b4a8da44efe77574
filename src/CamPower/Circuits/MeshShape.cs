using System.Collections.Generic;
using System.Linq;

namespace CamPower.Circuits;

/// <summary>What the shape of a network alone proves: that no source sinks current, and that Newton's path descends to the operating
/// point.</summary>
internal static class MeshShape
{
    /// <summary>Whether every source feeds a part of the network of its own, out of which only loads take current: whatever they take, none
    /// sinks any.</summary>
    internal static bool SourcesAreApart(Circuit circuit)
    {
        PotentialGroups parts = Joined(circuit, withResistance: true);
        var fed = new HashSet<int>(circuit.SourcePlus.Select(parts.RootOf));
        return fed.Count == circuit.SourceCount
            && !circuit.SourceMinus.Concat(circuit.LoadMinus).Any(node => fed.Contains(parts.RootOf(node)));
    }

    /// <summary>Whether the sources are apart, their negative terminals at one voltage, and every load goes from what one of them feeds to
    /// the part of those terminals.</summary>
    /// <remarks>The voltage that any load costs any other is then not negative, and without resistance components every
    /// load's current is convex and falls with its voltage: the equations are those of a convex map with an
    /// M-matrix as Jacobian. Source: <see cref="Sources.MonotoneNewton"/>.</remarks>
    internal static bool SpansTheSources(Circuit circuit)
    {
        if (!SourcesAreApart(circuit)) return false;
        PotentialGroups parts = Joined(circuit, withResistance: true), nodes = Joined(circuit, withResistance: false);
        int shared = nodes.RootOf(circuit.SourceMinus[0]), back = parts.RootOf(circuit.SourceMinus[0]);
        return circuit.SourceMinus.All(node => nodes.RootOf(node) == shared)
            && circuit.LoadMinus.All(node => parts.RootOf(node) == back)
            && circuit.LoadPlus.All(node => parts.RootOf(node) != back);
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
