using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using CamPower.Circuits;

namespace CamPower.Tests.Circuits.Networks.Ngspice;

/// <summary>Writes a network as a deck for ngspice that solves its operating point and prints every node.</summary>
/// <remarks>
/// Every load node gets a .nodeset at the voltage it would have without load: started elsewhere, the simulator may
/// find the collapsed root. (With the positive nodes only, ngspice 39 did: 2.82 V instead of 3.98 V at the first camera
/// of the network in which more draw means more voltage.) A source that the library blocked is left out, for a simulator's source sinks current
/// without complaint; that it had to be blocked is tested elsewhere.
/// </remarks>
internal static class NgspiceNetlist
{
    internal static string Write(string title, DcNetwork network, IReadOnlyCollection<string> blockedSources)
    {
        var deck = new StringBuilder();
        deck.Append("* ").Append(title).Append('\n');
        for (int s = 0; s < network.Sources.Count; s++)
        {
            NetworkSource source = network.Sources[s];
            if (!blockedSources.Contains(source.Name)) WriteSource(deck, network, source, s);
        }

        for (int b = 0; b < network.Branches.Count; b++)
        {
            NetworkBranch branch = network.Branches[b];
            string kind = branch.Resistance.Ohms > 0 ? "R" : "V";
            Line(deck, $"{kind}b{b} {Node(network, branch.From)} {Node(network, branch.To)} {Number(branch.Resistance.Ohms)}");
        }

        for (int k = 0; k < network.Loads.Count; k++)
        {
            NetworkLoad load = network.Loads[k];
            string plus = Node(network, load.PositiveNode), minus = Node(network, load.NegativeNode);
            Line(deck, $"Bl{k} {plus} {minus} I={Draw(load.Load, $"V({plus},{minus})")}");
        }

        WriteControl(deck, network);
        return deck.ToString();
    }

    internal static string Node(DcNetwork network, string node) => node == network.Reference ? "0" : node.ToLowerInvariant();

    private static void WriteSource(StringBuilder deck, DcNetwork network, NetworkSource source, int s)
    {
        string plus = Node(network, source.PositiveNode), minus = Node(network, source.NegativeNode);
        bool ideal = !(source.Resistance.Ohms > 0);
        Line(deck, $"Vs{s} {(ideal ? plus : $"emf{s}")} {minus} DC {Number(source.Voltage.Volts)}");
        if (!ideal) Line(deck, $"Rs{s} emf{s} {plus} {Number(source.Resistance.Ohms)}");
    }

    private static string Draw(Load load, string volts)
    {
        double watts = (double)load.PowerComponent.Watts, amperes = load.CurrentComponent.Amperes;
        string resistive = load.ResistanceComponent is { } share ? $"+{volts}/{Number(share.Ohms)}" : string.Empty;
        return load.IsLargerOf
            ? $"max({Number(watts)}/{volts},{Number(amperes)})"
            : $"{Number(watts)}/{volts}+{Number(amperes)}{resistive}";
    }

    private static void WriteControl(StringBuilder deck, DcNetwork network)
    {
        string open = Number(network.Sources.Max(s => s.Voltage.Volts));
        foreach (string node in network.Loads.Select(l => l.PositiveNode).Distinct(StringComparer.Ordinal))
        {
            Line(deck, $".nodeset V({Node(network, node)})={open}");
        }

        foreach (string node in network.Loads.Select(l => l.NegativeNode).Where(n => n != network.Reference).Distinct(StringComparer.Ordinal))
        {
            Line(deck, $".nodeset V({Node(network, node)})=0");
        }

        Line(deck, $".options reltol=1e-10 abstol=1e-15 vntol=1e-12 itl1=1000");
        Line(deck, $".control");
        Line(deck, $"op");
        Line(deck, $"set numdgt=15");
        foreach (string node in network.NodeNames.Where(node => node != network.Reference)) Line(deck, $"print v({Node(network, node)})");
        Line(deck, $"quit");
        Line(deck, $".endc");
        Line(deck, $".end");
    }

    private static void Line(StringBuilder deck, FormattableString line) => deck.Append(FormattableString.Invariant(line)).Append('\n');

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
