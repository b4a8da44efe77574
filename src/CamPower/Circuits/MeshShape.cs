using System.Collections.Generic;
using System.Linq;

namespace CamPower.Circuits;

/// <summary>What the shape of a network alone proves, whatever its voltages: that no source sinks current, and that Newton's path descends
/// to the operating point.</summary>
internal sealed class MeshShape
{
    internal MeshShape(Circuit circuit)
    {
        PotentialGroups parts = Joined(circuit, withResistance: true), nodes = Joined(circuit, withResistance: false);
        int shared = nodes.RootOf(circuit.SourceMinus[0]), back = parts.RootOf(circuit.SourceMinus[0]);
        bool meetAtOneVoltage = circuit.SourceMinus.All(node => nodes.RootOf(node) == shared);
        var fed = new HashSet<int>(circuit.SourcePlus.Select(parts.RootOf));
        SourcesAreApart = fed.Count == circuit.SourceCount
            && !circuit.SourceMinus.Concat(circuit.LoadMinus).Any(node => fed.Contains(parts.RootOf(node)));
        SpansTheSources = SourcesAreApart && meetAtOneVoltage
            && circuit.LoadMinus.All(node => parts.RootOf(node) == back)
            && circuit.LoadPlus.All(node => parts.RootOf(node) != back);
        SharesTheReturn = meetAtOneVoltage && circuit.LoadMinus.All(node => nodes.RootOf(node) == shared);
    }

    /// <summary>Whether every source feeds a part of the network of its own, out of which only loads take current: whatever they take, none
    /// sinks any.</summary>
    internal bool SourcesAreApart { get; }

    /// <summary>Whether the sources are apart, their negative terminals at one voltage, and every load goes from what one of them feeds to
    /// the part of those terminals.</summary>
    /// <remarks>The voltage that any load costs any other is then not negative, and without resistance components every
    /// load's current is convex and falls with its voltage: the equations are those of a convex map with an
    /// M-matrix as Jacobian. Source: <see cref="Sources.MonotoneNewton"/>.</remarks>
    internal bool SpansTheSources { get; }

    /// <summary>Whether the negative terminals of all loads and sources are at one voltage.</summary>
    /// <remarks>The Jacobian is then an M-matrix whatever the shares, and more current of a source means more voltage everywhere. Source:
    /// <see cref="Sources.MonotoneNewton"/>.</remarks>
    internal bool SharesTheReturn { get; }

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
