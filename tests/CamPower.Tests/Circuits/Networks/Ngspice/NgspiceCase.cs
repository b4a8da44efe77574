using CamPower.Circuits;

namespace CamPower.Tests.Circuits.Networks.Ngspice;

/// <summary>A network that is held against ngspice.</summary>
internal sealed record NgspiceCase(string Name, DcNetwork Network)
{
    internal NetworkSolution Solution { get; } = Network.Solve();

    internal string Deck() => NgspiceNetlist.Write(Name, Network, Solution.BlockedSources);
}
