using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;

namespace CamPower.Tests.Circuits.Networks.Ngspice;

/// <summary>A network that is held against ngspice.</summary>
internal sealed record NgspiceCase(string Name, DcNetwork Network)
{
    internal NetworkSolution Solution { get; } = Network.Solve();

    /// <summary>The nodes that the simulator is asked for: all but the reference, by name in the network.</summary>
    internal IEnumerable<string> Nodes => Network.NodeNames.Where(node => node != Network.Reference);

    internal string Deck() => NgspiceNetlist.Write(Name, Network, Solution.BlockedSources);
}
