using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Circuits;

/// <summary>A direct-current network of sources, branches and loads, of any shape.</summary>
/// <remarks>
/// <para>Immutable, and built by <see cref="DcNetworkBuilder"/>. How it is solved is worked out once: a radial network
/// (one source; every positive conductor with a negative one that returns its current, or one pole without resistance)
/// in time linear in its size by ladder reduction, any other by sparse factorisation of the nodal equations.</para>
/// <para>The operating point is the end of the solution branch that starts at zero load and keeps a positive-definite Jacobian; where
/// several sources let that branch end before the load is reached, the highest one beyond. Any load voltage at or below zero is no
/// operating point. With resistance components between nodes of which neither is fixed, a larger draw can raise another voltage.
/// Loads draw at every voltage here: what happens below a drop-out is for the caller to judge. Source:
/// <see cref="Sources.Kirchhoff"/>.</para>
/// </remarks>
/// <example>See <see cref="DcNetworkBuilder"/> for the description; then
/// <code>
/// NetworkSolution solution = network.Solve();
/// if (solution.HasOperatingPoint) Console.WriteLine(solution.AtLoad("gate camera"));
/// Console.WriteLine(network.MarginToCollapse());
/// </code>
/// </example>
public sealed class DcNetwork
{
    private readonly Circuit _circuit;
    private readonly NetworkPlan _plan;

    // Made when the first name is asked for: a network of which only totals are read needs none.
    private readonly Lazy<NetworkNames> _sourceIndex, _branchIndex, _loadIndex;

    internal DcNetwork(Circuit circuit, NetworkNames nodes, string reference, IEnumerable<NetworkSource> sources,
        IEnumerable<NetworkBranch> branches, IEnumerable<NetworkLoad> loads)
    {
        _circuit = circuit;
        Reference = reference;
        Sources = Array.AsReadOnly([.. sources]);
        Branches = Array.AsReadOnly([.. branches]);
        Loads = Array.AsReadOnly([.. loads]);
        NodeIndex = nodes;
        _sourceIndex = new Lazy<NetworkNames>(() => new NetworkNames("source", [.. Sources.Select(s => s.Name)]));
        _branchIndex = new Lazy<NetworkNames>(() => new NetworkNames("branch", [.. Branches.Select(b => b.Name)]));
        _loadIndex = new Lazy<NetworkNames>(() => new NetworkNames("load", [.. Loads.Select(l => l.Name)]));
        _plan = (NetworkPlan?)Ladder.TryCreate(circuit) ?? Mesh.TryCreate(circuit, new bool[circuit.SourceCount])!;
    }

    private DcNetwork(
        DcNetwork other, Circuit circuit, NetworkPlan plan, IReadOnlyList<NetworkSource> sources, IReadOnlyList<NetworkLoad> loads)
    {
        _circuit = circuit;
        Reference = other.Reference;
        Sources = sources;
        Branches = other.Branches;
        Loads = loads;
        NodeIndex = other.NodeIndex;
        _sourceIndex = other._sourceIndex;
        _branchIndex = other._branchIndex;
        _loadIndex = other._loadIndex;
        _plan = plan;
    }

    /// <summary>Names of the nodes, in the order in which sources and branches first named them.</summary>
    public IReadOnlyList<string> NodeNames => NodeIndex.All;

    /// <summary>Names of the sources, in the order in which they were added.</summary>
    public IReadOnlyList<string> SourceNames => SourceIndex.All;

    /// <summary>Names of the branches, in the order in which they were added.</summary>
    public IReadOnlyList<string> BranchNames => BranchIndex.All;

    /// <summary>Names of the loads, in the order in which they were added.</summary>
    public IReadOnlyList<string> LoadNames => LoadIndex.All;

    /// <summary>Name of the node at 0 V.</summary>
    public string Reference { get; }

    /// <summary>The sources, in the order in which they were added.</summary>
    internal IReadOnlyList<NetworkSource> Sources { get; }

    /// <summary>The branches, in the order in which they were added.</summary>
    internal IReadOnlyList<NetworkBranch> Branches { get; }

    /// <summary>The loads, in the order in which they were added.</summary>
    internal IReadOnlyList<NetworkLoad> Loads { get; }

    /// <summary>Whether it is solved as a tree of loops, in time linear in its size.</summary>
    public bool IsRadial => _plan is Ladder;

    internal Circuit Circuit => _circuit;

    internal NetworkPlan Plan => _plan;

    internal NetworkNames NodeIndex { get; }

    internal NetworkNames SourceIndex => _sourceIndex.Value;

    internal NetworkNames BranchIndex => _branchIndex.Value;

    internal NetworkNames LoadIndex => _loadIndex.Value;

    /// <summary>The same network with other loads in some of its places; what was worked out for its shape serves again.</summary>
    /// <param name="loads">The new loads by the names of the loads that they replace. Loads not named stay as they are.</param>
    /// <exception cref="ArgumentNullException"><paramref name="loads"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">The network has no load of a name.</exception>
    public DcNetwork WithLoads(IReadOnlyDictionary<string, Load> loads)
    {
        NetworkLoad[] changed = [.. Loads];
        foreach (KeyValuePair<string, Load> load in Require.NotNull(loads, nameof(loads)))
        {
            int k = LoadIndex.IndexOf(load.Key, nameof(loads));
            changed[k] = new NetworkLoad(
                load.Key, changed[k].PositiveNode, changed[k].NegativeNode, Require.NotNull(load.Value, nameof(loads)));
        }

        return With(changed);
    }

    /// <summary>The same network with other loads, in the order in which they were added.</summary>
    internal DcNetwork WithLoads(Load[] loads) =>
        With([.. Loads.Select((load, k) => new NetworkLoad(load.Name, load.PositiveNode, load.NegativeNode, loads[k]))]);

    /// <summary>The same network with other voltages of its sources, in the order in which they were added; what was worked out for its
    /// shape serves again. [V]</summary>
    internal DcNetwork WithSourceVolts(double[] volts)
    {
        Circuit circuit = _circuit.WithSourceVolts(volts);
        NetworkSource[] sources =
            [.. Sources.Select((s, i) => new NetworkSource(s.Name, s.PositiveNode, s.NegativeNode, volts[i], s.Ohms, s.MaySink))];
        return new DcNetwork(this, circuit, _plan.At(circuit), Array.AsReadOnly(sources), Loads);
    }

    private DcNetwork With(NetworkLoad[] loads) =>
        new(this, _circuit.With(Array.ConvertAll(loads, l => l.Load)), _plan, Sources, Array.AsReadOnly(loads));

    /// <summary>Solves the network, or finds that it has no operating point: an answer, not an error.</summary>
    /// <remarks>
    /// Newton's method from the voltages without load; damped only in that, where its failure would prove nothing
    /// (several sources, or resistance components between floating nodes), the loads are raised from zero in steps.
    /// A source that cannot sink current is blocked where others would feed back into it. With several sources the
    /// branch from zero load may end before the load is reached: the answer is then the operating point of highest
    /// voltages, and <see cref="NetworkSolution.IsReachedByJump"/> says so.
    /// </remarks>
    public NetworkSolution Solve()
    {
        var search = new OperatingPointSearch(_circuit, _plan);
        bool found = search.TryOperate();
        return new NetworkSolution(this, found ? search.State() : null, search);
    }

    /// <summary>The factor by which all constant-power components together could grow before no operating point is left. [1]</summary>
    /// <remarks>
    /// The other components stay as they are. 1 at the limit, less than 1 beyond it; 0 where the others alone leave no operating point;
    /// null only where nothing can collapse (no constant-power component, or no resistance), or only at more than 1e15 times the load.
    /// With several sources it is the end of the branch that holds the operating point; without an operating point, of the branch that goes
    /// furthest. A source that comes on lets a branch go on. Accurate to about 1e-9 of itself; where the operating point is lost otherwise
    /// than at a fold (a load whose larger component changes, a voltage that reaches zero) found by halving to 1e-11.
    /// Costs some ten solutions.
    /// Source: <see cref="Sources.MaximumPower"/> for the one load that has a closed form.
    /// </remarks>
    public Ratio? MarginToCollapse()
    {
        double margin = CollapseMargin.Of(new OperatingPointSearch(_circuit, _plan));
        return double.IsInfinity(margin) ? null : Ratio.FromDecimalFractions(margin);
    }

    /// <summary>Numbers of nodes, branches, sources and loads; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{(IsRadial ? "radial" : "meshed")} network: {NodeNames.Count} nodes, ")
            + FormattableString.Invariant($"{Sources.Count} sources, {Branches.Count} branches, {Loads.Count} loads");
}
