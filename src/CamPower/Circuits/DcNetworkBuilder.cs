using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Circuits;

/// <summary>Describes a direct-current network, element by element.</summary>
/// <remarks>
/// A node comes into being when a source or a branch names it; loads and the reference must name such nodes. Names
/// are compared letter by letter. Not for use by several threads at once; the network it builds is.
/// </remarks>
/// <example>
/// <code>
/// DcNetwork network = new DcNetworkBuilder()
///     .AddSource("supply", "supply +", "supply -", ElectricPotential.FromVolts(12))
///     .AddRun("run to the gate", run, "supply +", "gate +", "supply -", "gate -", Temperature.FromDegreesCelsius(40))
///     .AddLoad("gate camera", "gate +", "gate -", Load.ConstantPower(Power.FromWatts(9)))
///     .Build(reference: "supply -");
/// </code>
/// </example>
public sealed class DcNetworkBuilder
{
    private const int NoNode = -1;
    private const double LeastOhms = 1e-6, MostOhms = 1e8;

    private readonly NetworkNames _elements = new("element");
    private NetworkNames _nodes = new("node");

    // Whether a network that was built holds the names of the nodes too, so that a new one goes into a copy.
    private bool _nodesAreShared;
    private readonly List<NetworkSource> _sources = [];
    private readonly List<NetworkBranch> _branches = [];
    private readonly List<NetworkLoad> _loads = [];

    // The nodes of sources and branches, which come into being with them; of loads as far as they were there, otherwise -1.
    private readonly List<int> _sourcePlus = [], _sourceMinus = [], _branchFrom = [], _branchTo = [], _loadPlus = [], _loadMinus = [];

    /// <summary>Adds an ideal source: its terminal voltage does not fall with the current. It cannot sink current.</summary>
    /// <param name="name">Its name, unique in the network. Not empty.</param>
    /// <param name="positiveNode">Node at its positive terminal.</param>
    /// <param name="negativeNode">Node at its negative terminal, another one.</param>
    /// <param name="voltage">Above 0 and at most 1 MV. [V]</param>
    /// <returns>The builder itself.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, the name is taken, or both terminals are one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="voltage"/> is outside its range.</exception>
    public DcNetworkBuilder AddSource(string name, string positiveNode, string negativeNode, ElectricPotential voltage) =>
        AddSource(name, positiveNode, negativeNode, voltage, ElectricResistance.Zero);

    /// <summary>Adds a source with an internal resistance. It cannot sink current.</summary>
    /// <param name="name">Its name, unique in the network. Not empty.</param>
    /// <param name="positiveNode">Node at its positive terminal.</param>
    /// <param name="negativeNode">Node at its negative terminal, another one.</param>
    /// <param name="voltage">Voltage without load, above 0 and at most 1 MV. [V]</param>
    /// <param name="resistance">0 for an ideal source, otherwise from 1 µΩ to 100 MΩ. [Ω]</param>
    /// <returns>The builder itself.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, the name is taken, or both terminals are one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public DcNetworkBuilder AddSource(
        string name, string positiveNode, string negativeNode, ElectricPotential voltage, ElectricResistance resistance) =>
        AddSource(name, positiveNode, negativeNode, voltage, resistance, maySink: false);

    /// <summary>Adds a source with an internal resistance, and says whether it may sink current.</summary>
    /// <param name="name">Its name, unique in the network. Not empty.</param>
    /// <param name="positiveNode">Node at its positive terminal.</param>
    /// <param name="negativeNode">Node at its negative terminal, another one.</param>
    /// <param name="voltage">Voltage without load, above 0 and at most 1 MV. [V]</param>
    /// <param name="resistance">0 for an ideal source, otherwise from 1 µΩ to 100 MΩ. [Ω]</param>
    /// <param name="maySink">True for a battery, or a source of a textbook: current may flow into it. False for a power
    /// supply: it is blocked where others would feed back into it.</param>
    /// <returns>The builder itself.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, the name is taken, or both terminals are one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public DcNetworkBuilder AddSource(
        string name, string positiveNode, string negativeNode, ElectricPotential voltage, ElectricResistance resistance, bool maySink)
    {
        double volts = Require.SourceVolts(voltage.Volts, nameof(voltage));
        double ohms = Ohms(resistance.Ohms, nameof(resistance));
        Check(name, nameof(name), (positiveNode, nameof(positiveNode)), (negativeNode, nameof(negativeNode)));
        Claim(name, nameof(name));
        _sourcePlus.Add(NodeOf(positiveNode));
        _sourceMinus.Add(NodeOf(negativeNode));
        _sources.Add(new NetworkSource(name, positiveNode, negativeNode, volts, ohms, maySink));
        return this;
    }

    /// <summary>Adds a resistance between two nodes.</summary>
    /// <param name="name">Its name, unique in the network. Not empty.</param>
    /// <param name="from">Node where its current counts as going in.</param>
    /// <param name="to">Node where its current counts as coming out, another one.</param>
    /// <param name="resistance">0, or from 1 µΩ to 100 MΩ. [Ω]</param>
    /// <returns>The builder itself.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, the name is taken, or both ends are one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="resistance"/> is outside its range.</exception>
    public DcNetworkBuilder AddBranch(string name, string from, string to, ElectricResistance resistance)
    {
        double ohms = Ohms(resistance.Ohms, nameof(resistance));
        Check(name, nameof(name), (from, nameof(from)), (to, nameof(to)));
        return AddBranch(name, from, to, ohms);
    }

    /// <summary>Adds one conductor between two nodes: one pole of a cable, or its shield.</summary>
    /// <param name="name">Its name, unique in the network. Not empty.</param>
    /// <param name="conductor">The conductor.</param>
    /// <param name="length">Its length, one way. [any length unit]</param>
    /// <param name="from">Node where its current counts as going in.</param>
    /// <param name="to">Node where its current counts as coming out, another one.</param>
    /// <param name="conductorAt">Its temperature, inside the material's range.</param>
    /// <returns>The builder itself.</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, the name is taken, or both ends are one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range, or the resistance is outside that of a
    /// branch.</exception>
    public DcNetworkBuilder AddConductor(string name, Conductor conductor, Length length, string from, string to, Temperature conductorAt)
    {
        double ohms = Ohms(Require.NotNull(conductor, nameof(conductor)).ResistanceAt(length, conductorAt).Ohms, nameof(length));
        Check(name, nameof(name), (from, nameof(from)), (to, nameof(to)));
        return AddBranch(name, from, to, ohms);
    }

    /// <summary>Adds both conductors of a run, as two branches.</summary>
    /// <remarks>The branches are called "name +" and "name -". A joint of the run counts half in each pole; in a network
    /// where the poles carry different currents add joints as branches of their own.</remarks>
    /// <param name="name">Name of the run. Not empty.</param>
    /// <param name="run">The run.</param>
    /// <param name="positiveFrom">Positive node at the source end.</param>
    /// <param name="positiveTo">Positive node at the load end.</param>
    /// <param name="negativeFrom">Negative node at the source end.</param>
    /// <param name="negativeTo">Negative node at the load end.</param>
    /// <param name="conductorAt">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <returns>The builder itself.</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, a name is taken, or both ends of a conductor are one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside a material's range, or a resistance outside that of a
    /// branch.</exception>
    public DcNetworkBuilder AddRun(
        string name, CableRun run, string positiveFrom, string positiveTo, string negativeFrom, string negativeTo, Temperature conductorAt)
    {
        Require.Name(name, nameof(name));
        double celsius = Require.NotNull(run, nameof(run)).CelsiusOf(conductorAt, nameof(conductorAt));
        double plus = Ohms(Snapped(run.OutgoingOhmsAt(celsius)).Ohms, nameof(run)),
            minus = Ohms(Snapped(run.ReturnOhmsAt(celsius)).Ohms, nameof(run));
        Check(name + " +", nameof(name), (positiveFrom, nameof(positiveFrom)), (positiveTo, nameof(positiveTo)));
        Check(name + " -", nameof(name), (negativeFrom, nameof(negativeFrom)), (negativeTo, nameof(negativeTo)));
        if (_elements.Contains(name + " -")) throw Taken(name + " -", nameof(name));
        return AddBranch(name + " +", positiveFrom, positiveTo, plus).AddBranch(name + " -", negativeFrom, negativeTo, minus);
    }

    /// <summary>A conductor's resistance as a branch can have it: less than a microohm, millimeters of large wire, counts as
    /// none.</summary>
    internal static ElectricResistance Snapped(double ohms) => ElectricResistance.FromOhms(ohms < LeastOhms ? 0 : ohms);

    /// <summary>Adds a load between two nodes.</summary>
    /// <param name="name">Its name, unique in the network. Not empty.</param>
    /// <param name="positiveNode">Node at its positive terminal.</param>
    /// <param name="negativeNode">Node at its negative terminal, another one.</param>
    /// <param name="load">What it draws.</param>
    /// <returns>The builder itself.</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, the name is taken, or both terminals are one node.</exception>
    public DcNetworkBuilder AddLoad(string name, string positiveNode, string negativeNode, Load load)
    {
        Require.NotNull(load, nameof(load));
        Check(name, nameof(name), (positiveNode, nameof(positiveNode)), (negativeNode, nameof(negativeNode)));
        Claim(name, nameof(name));
        _loadPlus.Add(_nodes.TryIndexOf(positiveNode, out int plus) ? plus : NoNode);
        _loadMinus.Add(_nodes.TryIndexOf(negativeNode, out int minus) ? minus : NoNode);
        _loads.Add(new NetworkLoad(name, positiveNode, negativeNode, load));
        return this;
    }

    /// <summary>The network described so far.</summary>
    /// <param name="reference">The node at 0 V.</param>
    /// <exception cref="ArgumentNullException"><paramref name="reference"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// There is no source; a load or the reference names a node that no source or branch has; a node has no path of
    /// branches and sources to the reference; or ideal sources and branches of no resistance form a loop, in which
    /// nothing says what current flows. The message names the element.
    /// </exception>
    public DcNetwork Build(string reference)
    {
        Require.Name(reference, nameof(reference));
        if (_sources.Count == 0) throw Refused("A network needs at least one source.");
        var circuit = new Circuit
        {
            NodeCount = _nodes.Count,
            Reference = _nodes.IndexOf(reference, nameof(reference)),
            SourcePlus = [.. _sourcePlus],
            SourceMinus = [.. _sourceMinus],
            SourceVolts = [.. _sources.Select(s => s.Volts)],
            SourceOhms = [.. _sources.Select(s => s.Ohms)],
            SourceMaySink = [.. _sources.Select(s => s.MaySink)],
            BranchFrom = [.. _branchFrom],
            BranchTo = [.. _branchTo],
            BranchOhms = [.. _branches.Select(b => b.Ohms)],
            LoadPlus = NodesOf(_loadPlus, load => load.PositiveNode),
            LoadMinus = NodesOf(_loadMinus, load => load.NegativeNode),
            Loads = [.. _loads.Select(l => l.Load)],
        };
        RefuseIdealLoops(circuit);
        RefuseFloatingNodes(circuit, reference);
        _nodesAreShared = true;
        return new DcNetwork(circuit, _nodes, reference, _sources, _branches, _loads);
    }

    /// <summary>Numbers of what has been added; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"network so far: {_sources.Count} sources, {_branches.Count} branches, {_loads.Count} loads");

    private static double Ohms(double ohms, string parameter)
    {
        return ohms == 0 || (ohms >= LeastOhms && ohms <= MostOhms)
            ? ohms
            : throw Require.OutOfRange(ohms, parameter, "Ω", FormattableString.Invariant($"0 or from {LeastOhms} Ω to {MostOhms}"));
    }

    // Everything is checked before anything is added: what throws leaves the builder as it was.
    private static void Check(string name, string parameter, (string Name, string Parameter) node, (string Name, string Parameter) other)
    {
        Require.Name(name, parameter);
        Require.Name(node.Name, node.Parameter);
        Require.Name(other.Name, other.Parameter);
        if (string.Equals(node.Name, other.Name, StringComparison.Ordinal))
        {
            throw new ArgumentException($"'{name}' has both ends at node '{node.Name}'.", other.Parameter);
        }
    }

    private void Claim(string name, string parameter)
    {
        if (!_elements.Take(name)) throw Taken(name, parameter);
    }

    private static ArgumentException Taken(string name, string parameter) => new($"The name '{name}' is taken.", parameter);

    private DcNetworkBuilder AddBranch(string name, string from, string to, double ohms)
    {
        Claim(name, nameof(name));
        _branchFrom.Add(NodeOf(from));
        _branchTo.Add(NodeOf(to));
        _branches.Add(new NetworkBranch(name, from, to, ohms));
        return this;
    }

    private int NodeOf(string name)
    {
        if (_nodes.TryIndexOf(name, out int index)) return index;
        if (_nodesAreShared) _nodes = _nodes.Copy();
        _nodesAreShared = false;
        _nodes.Take(name);
        return _nodes.Count - 1;
    }

    private int[] NodesOf(List<int> known, Func<NetworkLoad, string> nodeOf)
    {
        for (int k = 0; k < known.Count; k++)
        {
            if (known[k] != NoNode) continue;
            string node = nodeOf(_loads[k]);
            known[k] = _nodes.TryIndexOf(node, out int index)
                ? index
                : throw Refused($"The network has no node '{node}', which load '{_loads[k].Name}' names.");
        }

        return [.. known];
    }

#pragma warning disable MA0015 // The fault is in what was added, not in an argument of Build.
    private static ArgumentException Refused(string message) => new(message);
#pragma warning restore MA0015

    private void RefuseIdealLoops(Circuit circuit)
    {
        var groups = new PotentialGroups(circuit.NodeCount);
        for (int b = 0; b < circuit.BranchCount; b++)
        {
            if (circuit.BranchOhms[b] > 0 || groups.TryJoin(circuit.BranchFrom[b], circuit.BranchTo[b], 0)) continue;
            throw Refused($"Branch '{_branches[b].Name}' closes a loop of branches without resistance: "
                + "nothing says how the current divides. Leave one out, or give it its resistance.");
        }

        for (int s = 0; s < circuit.SourceCount; s++)
        {
            if (circuit.SourceOhms[s] > 0 || groups.TryJoin(circuit.SourcePlus[s], circuit.SourceMinus[s], circuit.SourceVolts[s]))
            {
                continue;
            }

            throw Refused($"Source '{_sources[s].Name}' closes a loop of ideal sources and branches without resistance: a short circuit, "
                + "or sources in parallel of which nothing says how they share. Give it its internal resistance.");
        }
    }

    private void RefuseFloatingNodes(Circuit circuit, string reference)
    {
        var joined = new PotentialGroups(circuit.NodeCount);
        for (int b = 0; b < circuit.BranchCount; b++) joined.TryJoin(circuit.BranchFrom[b], circuit.BranchTo[b], 0);
        for (int s = 0; s < circuit.SourceCount; s++) joined.TryJoin(circuit.SourcePlus[s], circuit.SourceMinus[s], 0);
        int root = joined.RootOf(circuit.Reference);
        for (int node = 0; node < circuit.NodeCount; node++)
        {
            if (joined.RootOf(node) == root) continue;
            throw Refused(
                $"Node '{_nodes[node]}' floats: no path of branches and sources leads from it to the reference node '{reference}'.");
        }
    }
}
