using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tests.Circuits.Ngspice;

/// <summary>One ideal source and a tree of loops with loads; a tree of one node is a single run.</summary>
/// <param name="Name">Name of the case, and of its netlist.</param>
/// <param name="About">Where its numbers come from, in words.</param>
/// <param name="SourceVolts">Voltage of the source. [V]</param>
/// <param name="Nodes">The nodes, each after the one that feeds it.</param>
internal sealed record SimulatedNetwork(string Name, string About, double SourceVolts, IReadOnlyList<SimulatedNode> Nodes)
{
    /// <summary>Whether the simulator found a point that a network could stay at: every voltage above 0.</summary>
    /// <remarks>Where the current components alone take all of the source voltage it finds a negative one.</remarks>
    public bool HasOperatingPoint => Nodes.All(n => n.Volts > 0);

    public SimulatedNetwork WithVolts(IReadOnlyList<double>? volts) =>
        this with { Nodes = [.. Nodes.Select((node, i) => node with { Volts = volts?[i] })] };

    public override string ToString() => Name;
}
