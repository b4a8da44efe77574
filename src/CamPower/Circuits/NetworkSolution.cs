using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Circuits;

/// <summary>Solution of a network: every voltage and current, or that it has no operating point.</summary>
/// <remarks>
/// Immutable. Where there is no operating point <see cref="HasOperatingPoint"/> is false and reading a voltage or a
/// current throws; <see cref="DcNetwork.MarginToCollapse"/> then says how much less load would do. The
/// same network gives the same bits.
/// </remarks>
public sealed class NetworkSolution
{
    private readonly NetworkState? _state;

    internal NetworkSolution(DcNetwork network, NetworkState? state, OperatingPointSearch search)
    {
        Network = network;
        _state = state;
        Iterations = search.Iterations;
        IsReachedByJump = state is not null && search.IsReachedByJump;
        BlockedSources = state is null
            ? []
            : Array.AsReadOnly(network.Sources.Where((_, s) => search.Blocked[s]).Select(s => s.Name).ToArray());
    }

    /// <summary>The network that was solved.</summary>
    public DcNetwork Network { get; }

    /// <summary>Whether the network can carry its loads.</summary>
    public bool HasOperatingPoint => _state is not null;

    /// <summary>Names of the sources that others would feed back into: they are blocked and deliver nothing. Empty without an operating
    /// point.</summary>
    public IReadOnlyList<string> BlockedSources { get; }

    /// <summary>Whether a load that rises from zero meets this point only after a jump to lower voltages, where the branch
    /// that starts without load ends. Possible only with several sources.</summary>
    public bool IsReachedByJump { get; }

    /// <summary>Steps of Newton's method that the answer took.</summary>
    public int Iterations { get; }

    /// <summary>Power that the sources deliver, what their internal resistance loses included: the sum of E·I. [W]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Power SourcePower => Power.FromWatts(Balance.Delivered);

    /// <summary>Power that the loads take: the sum of V·I. [W]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Power LoadPower => Power.FromWatts(Balance.Taken);

    /// <summary>Power lost in branches and inside the sources: the sum of I²·R. [W]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Power Loss => Power.FromWatts(Balance.Lost);

    /// <summary>Where the power goes. [W]</summary>
    internal PowerBalance Balance => State.Balance();

    private NetworkState State => _state ?? throw new InvalidOperationException(
        "The network has no operating point: it cannot carry its loads. Ask HasOperatingPoint first.");

    /// <summary>Voltage of a node against the reference. [V]</summary>
    /// <param name="node">Its name.</param>
    /// <exception cref="ArgumentException">The network has no such node.</exception>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricPotential VoltageAt(string node) =>
        ElectricPotential.FromVolts(State.NodeVolts[Network.NodeIndex.IndexOf(node, nameof(node))]);

    /// <summary>Current in a branch, positive from its first node to its second. [A]</summary>
    /// <param name="branch">Its name.</param>
    /// <exception cref="ArgumentException">The network has no such branch.</exception>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricCurrent CurrentIn(string branch) =>
        ElectricCurrent.FromAmperes(State.BranchAmperes[Network.BranchIndex.IndexOf(branch, nameof(branch))]);

    /// <summary>Current that a source delivers; 0 for one that is blocked. [A]</summary>
    /// <param name="source">Its name.</param>
    /// <exception cref="ArgumentException">The network has no such source.</exception>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricCurrent CurrentFrom(string source) =>
        ElectricCurrent.FromAmperes(State.SourceAmperes[Network.SourceIndex.IndexOf(source, nameof(source))]);

    /// <summary>Voltage, current and power of a load.</summary>
    /// <param name="load">Its name.</param>
    /// <exception cref="ArgumentException">The network has no such load.</exception>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public OperatingPoint AtLoad(string load)
    {
        int k = Network.LoadIndex.IndexOf(load, nameof(load));
        return new OperatingPoint(State.LoadVolts[k], State.LoadAmperes[k]);
    }

    /// <summary>Voltage of a load, by its place in the order in which they were added. [V]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    internal double VoltsAt(int load) => State.LoadVolts[load];

    /// <summary>Why this is the answer: what each load draws at its voltage, Kirchhoff's laws over each element and at each node, and the
    /// power balance.</summary>
    /// <remarks>For a network of more than 40 elements only the power balance and the load with the lowest voltage; the text says so.
    /// Without an operating point how much constant power there could be. Source: <see cref="Sources.Kirchhoff"/>.</remarks>
    /// <example><code>Console.WriteLine(network.Solve().Explain());</code></example>
    public Derivation Explain() => NetworkDerivation.Of(this, _state);

    /// <summary>The answer in one line, in the invariant culture; never throws.</summary>
    public override string ToString() => _state is null ? "no operating point"
        : _state.Balance() + string.Concat(Remarks().Select(remark => "; " + remark));

    /// <summary>What a reader of the voltages must know besides them.</summary>
    internal IEnumerable<string> Remarks()
    {
        if (BlockedSources.Count > 0) yield return $"blocked, since others would feed back into it: {string.Join(", ", BlockedSources)}";
        if (IsReachedByJump) yield return "reached by a jump: the branch that starts without load ends at less";
    }
}
