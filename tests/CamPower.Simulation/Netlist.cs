using System.Globalization;
using System.Linq;
using System.Text;
using CamPower.Tests.Circuits.Ngspice;

namespace CamPower.Simulation;

/// <summary>Writes a network as a netlist for ngspice, and names its nodes.</summary>
internal static class Netlist
{
    /// <remarks>The start at the source voltage is essential: without it the simulator finds the lower root.</remarks>
    public static string Of(SimulatedNetwork network)
    {
        string source = SimulatedNetworks.Text(network.SourceVolts);
        var text = new StringBuilder();
        Line($"* {network.Name}: {network.About}");
        Line($"V1 source 0 DC {source}");
        for (int i = 0; i < network.Nodes.Count; i++)
        {
            SimulatedNode node = network.Nodes[i];
            string here = NodeName(i), feeding = node.Parent < 0 ? "source" : NodeName(node.Parent);
            Line($"R{i} {feeding} {here} {SimulatedNetworks.Text(node.Ohms)}");
            if (node.Watts > 0) Line($"BP{i} {here} 0 I={SimulatedNetworks.Text(node.Watts)}/V({here})");
            if (node.Amperes > 0) Line($"I{i} {here} 0 DC {SimulatedNetworks.Text(node.Amperes)}");
            if (node.LoadOhms is { } ohms) Line($"RL{i} {here} 0 {SimulatedNetworks.Text(ohms)}");
        }

        string[] volts = [.. Enumerable.Range(0, network.Nodes.Count).Select(i => $"v({NodeName(i)})")];
        Line($".nodeset {string.Join(' ', volts.Select(v => $"{v}={source}"))}");
        Line($".options reltol=1e-10 abstol=1e-15 vntol=1e-12");
        Line($".control");
        Line($"set numdgt=16");
        Line($"op");
        Line($"print {string.Join(' ', volts)}");
        Line($"quit");
        Line($".endc");
        Line($".end");
        return text.ToString();

        void Line(System.FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    public static string NodeName(int index) => "n" + index.ToString(CultureInfo.InvariantCulture);
}
