using System;
using System.Collections.Generic;
using System.Linq;
using static CamPower.DerivationStep;

namespace CamPower.Circuits;

/// <summary>Writes down why the answer for a network is what it is: every load's draw, and the laws that the answer keeps.</summary>
/// <remarks>
/// A network is not solved by a formula, so the steps show that the answer holds: each law gives one quantity back from
/// the others. Of those in an equation the largest is given back, so that its six digits do not rest on a small difference.
/// </remarks>
internal sealed class NetworkDerivation
{
    /// <summary>With more elements than this only the totals and the worst load are written down.</summary>
    private const int MostElements = 40;

    // What a node carries beside this share of the largest current is rounding.
    private const double Nothing = 1e-12;

    private readonly DcNetwork _network;
    private readonly NetworkState _state;
    private readonly NetworkSolution _solution;

    private NetworkDerivation(NetworkSolution solution, NetworkState state)
    {
        _network = solution.Network;
        _state = state;
        _solution = solution;
    }

    internal static Derivation Of(NetworkSolution solution, NetworkState? state)
    {
        if (state is null) return OfCollapse(solution.Network);
        var derivation = new NetworkDerivation(solution, state);
        return new Derivation(solution.Network.ToString(), derivation.Steps(), derivation.Conclusion());
    }

    private int? WorstLoad => _network.Loads.Count == 0 ? null : Array.IndexOf(_state.LoadVolts, _state.LoadVolts.Min());

    private IEnumerable<DerivationStep> Steps()
    {
        IEnumerable<int> loads = HasTooManyElements(_network) ? WorstLoad is int worst ? [worst]
            : []
            : Enumerable.Range(0, _network.Loads.Count);
        IEnumerable<DerivationStep> steps = loads.SelectMany(LoadSteps);
        if (HasTooManyElements(_network)) return steps.Append(BalanceStep());
        return steps
            .Concat(Enumerable.Range(0, _network.Sources.Count).Select(SourceStep))
            .Concat(Enumerable.Range(0, _network.Branches.Count).Select(BranchStep))
            .Concat(_network.NodeNames.Select(NodeStep).OfType<DerivationStep>())
            .Concat(PowerSteps())
            .Append(BalanceStep());
    }

    private IEnumerable<DerivationStep> LoadSteps(int k)
    {
        NetworkLoad load = _network.Loads[k];
        yield return Step("V", load.Name, $"Voltage of {load.Name}", new SymbolSum().Plus(Node(load.PositiveNode))
            .Minus(Node(load.NegativeNode)).Total,
            _state.LoadVolts[k], "V");
        yield return Step("I", load.Name, $"Current of {load.Name}, {load.Load}", LoadDerivation.Current(load.Load, _state.LoadVolts[k]),
            _state.LoadAmperes[k], "A");
    }

    private DerivationStep SourceStep(int s)
    {
        NetworkSource source = _network.Sources[s];
        if (_solution.BlockedSources.Contains(source.Name, StringComparer.Ordinal))
        {
            return Step("U", source.Name,
                FormattableString.Invariant(
                $"Voltage at {source.Name}, whose own is {source.Volts:G6} V: it is blocked and delivers nothing"),
                new SymbolSum().Plus(Node(source.PositiveNode))
                    .Minus(Node(source.NegativeNode)).Total, Volts(source.PositiveNode) - Volts(source.NegativeNode), "V");
        }

        Symbols emf = Symbols.Of("E", source.Name, source.Volts);
        Symbols? lost = source.Ohms > 0
            ? Symbols.Of("I", source.Name, _state.SourceAmperes[s]).Times(Symbols.Of("R", source.Name, source.Ohms))
            : null;
        bool fromMinus = Math.Abs(Volts(source.PositiveNode)) >= Math.Abs(Volts(source.NegativeNode));
        string node = fromMinus ? source.PositiveNode : source.NegativeNode, other = fromMinus ? source.NegativeNode : source.PositiveNode;
        SymbolSum sum = new SymbolSum().Plus(Node(other)).Add(emf, minus: !fromMinus);
        if (lost is not null) sum.Add(lost, minus: fromMinus);
        return Step("V", node, $"Kirchhoff's voltage law over {source.Name}", sum.Total, Volts(node), "V");
    }

    private DerivationStep BranchStep(int b)
    {
        NetworkBranch branch = _network.Branches[b];
        bool forward = Math.Abs(Volts(branch.To)) >= Math.Abs(Volts(branch.From));
        string node = forward ? branch.To : branch.From, other = forward ? branch.From : branch.To;
        Symbols drop = Symbols.Of("I", branch.Name, _state.BranchAmperes[b]).Times(Symbols.Of("R", branch.Name, branch.Ohms));
        return Step("V", node, $"Kirchhoff's voltage law over {branch.Name}", new SymbolSum().Plus(Node(other))
            .Add(drop, minus: forward).Total, Volts(node), "V");
    }

    // The largest current at a node from the others; none where nothing flows.
    private DerivationStep? NodeStep(string node)
    {
        var into = new List<(string Name, double Amperes, bool Out)>();
        Collect(_network.Sources, _state.SourceAmperes, s => (s.Name, s.NegativeNode, s.PositiveNode));
        Collect(_network.Branches, _state.BranchAmperes, b => (b.Name, b.From, b.To));
        Collect(_network.Loads, _state.LoadAmperes, l => (l.Name, l.PositiveNode, l.NegativeNode));
        double most = into.Max(x => Math.Abs(x.Amperes));
        if (most <= Nothing * _state.SourceAmperes.Max(Math.Abs)) return null;

        (string name, double amperes, bool leaves) = into.First(x => Math.Abs(x.Amperes) == most);
        var others = new SymbolSum();
        foreach ((string Name, double Amperes, bool Out) x in into.Where(x => !Same(x.Name, name)))
        {
            others.Add(Symbols.Of("I", x.Name, x.Amperes), minus: x.Out == leaves);
        }

        return Step("I", name, $"Kirchhoff's current law at {node}", others.Total, amperes, "A");

        void Collect<T>(IReadOnlyList<T> elements, double[] amperes, Func<T, (string Name, string From, string To)> ends)
        {
            for (int i = 0; i < elements.Count; i++)
            {
                (string name, string from, string to) = ends(elements[i]);
                if (Same(from, node) || Same(to, node)) into.Add((name, amperes[i], Same(from, node)));
            }
        }
    }

    private IEnumerable<DerivationStep> PowerSteps()
    {
        var delivered = new SymbolSum();
        var taken = new SymbolSum();
        var lost = new SymbolSum();
        for (int s = 0; s < _network.Sources.Count; s++)
        {
            NetworkSource source = _network.Sources[s];
            Symbols current = Symbols.Of("I", source.Name, _state.SourceAmperes[s]);
            delivered.Plus(Symbols.Of("E", source.Name, source.Volts).Times(current));
            if (source.Ohms > 0) lost.Plus(current.Squared().Times(Symbols.Of("R", source.Name, source.Ohms)));
        }

        for (int b = 0; b < _network.Branches.Count; b++)
        {
            NetworkBranch branch = _network.Branches[b];
            lost.Plus(Symbols.Of("I", branch.Name, _state.BranchAmperes[b]).Squared().Times(Symbols.Of("R", branch.Name, branch.Ohms)));
        }

        for (int k = 0; k < _network.Loads.Count; k++)
        {
            string name = _network.Loads[k].Name;
            taken.Plus(Symbols.Of("V", name, _state.LoadVolts[k]).Times(Symbols.Of("I", name, _state.LoadAmperes[k])));
        }

        PowerBalance balance = _state.Balance();
        yield return Step("P", "delivered", "Power that the sources deliver", delivered.Total, balance.Delivered, "W");
        yield return Step("P", "taken", "Power that the loads take", taken.Total, balance.Taken, "W");
        yield return Step("P", "lost", "Power lost in branches and inside the sources", lost.Total, balance.Lost, "W");
    }

    private DerivationStep BalanceStep()
    {
        PowerBalance balance = _state.Balance();
        return Step("P", "delivered", "The power balance: what is delivered is taken or lost",
            new SymbolSum().Plus(Symbols.Of("P", "taken", balance.Taken))
                .Plus(Symbols.Of("P", "lost", balance.Lost)).Total, balance.Delivered, "W");
    }

    private string Conclusion()
    {
        string worst = WorstLoad is int k
            ? FormattableString.Invariant($" The lowest voltage is that of {_network.Loads[k].Name}, {_state.LoadVolts[k]:0.###} V.")
            : string.Empty;
        string shown = HasTooManyElements(_network)
            ? FormattableString.Invariant(
                $" With more than {MostElements} elements only the totals and the load of the lowest voltage are written down.")
            : string.Empty;
        return _state.Balance() + "." + worst
            + string.Concat(_solution.Remarks().Select(r => $" {char.ToUpperInvariant(r[0])}{r.Substring(1)}.")) + shown;
    }

    private static Derivation OfCollapse(DcNetwork network)
    {
        double watts = network.Loads.Sum(l => l.Load.Watts);
        double margin = network.MarginToCollapse()?.DecimalFractions ?? 0;
        if (!(margin > 0 && watts > 0))
        {
            return new Derivation(network.ToString(), [], "There is no operating point, and less constant power alone would not give one.");
        }

        double most = margin * watts;
        var asked = new SymbolSum();
        foreach (NetworkLoad load in network.Loads.Where(l => l.Load.Watts > 0)) asked.Plus(Symbols.Of("P", load.Name, load.Load.Watts));
        return new Derivation(network.ToString(),
        [
            .. HasTooManyElements(network)
                ? []
                : new[] { Step("P", "asked", "Constant power that the loads ask for", asked.Total, watts, "W") },
            Step("P", "most", FormattableString.Invariant(
                $"Most constant power, shared out in the same way; m is the margin found, {margin:G6}"),
                new Symbols("m", "m", Number(margin)).Times(Symbols.Of("P", "asked", watts)), most, "W"),
        ],
        FormattableString.Invariant($"There is no operating point: the loads ask for {watts:G6} W of constant power, ")
            + FormattableString.Invariant($"and the network carries at most {most:G6} W shared out in the same way."));
    }

    private static bool HasTooManyElements(DcNetwork network) =>
        network.Sources.Count + network.Branches.Count + network.Loads.Count > MostElements;

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);

    private Symbols Node(string name) => Symbols.Of("V", name, Volts(name));

    private double Volts(string node) => _state.NodeVolts[_network.NodeIndex.IndexOf(node, nameof(node))];

    private static DerivationStep Step(string symbol, string name, string meaning, Symbols right, double value, string unit)
    {
        Symbols left = Symbols.Of(symbol, name, value);
        return new DerivationStep(
            left.Plain, meaning, right.Plain, $"{left.Latex} = {right.Latex}", right.Numbers, value, unit, Sources.Kirchhoff);
    }
}
