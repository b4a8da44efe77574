using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;

namespace CamPower.Tests.Circuits.Ngspice;

/// <summary>The committed cases as a table: one row a node.</summary>
internal static class SimulatedNetworks
{
    /// <summary>The folder with the table and the netlists, from the top of the repository.</summary>
    public const string Folder = "tests/CamPower.Tests/Circuits/Ngspice";

    private const string Header = "case,about,source_volts,parent,ohms,watts,amperes,load_ohms,volts";

    public static IReadOnlyList<SimulatedNetwork> Read(string csv)
    {
        string[] lines = csv.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (lines[0] != Header) throw new FormatException($"The table must begin with {Header}.");
        return [.. lines.Skip(1).Select(line => line.Split(',')).GroupBy(cells => cells[0])
            .Select(rows => new SimulatedNetwork(rows.Key, rows.First()[1], Number(rows.First()[2]), [.. rows.Select(Node)]))];
    }

    public static string Write(IEnumerable<SimulatedNetwork> networks)
    {
        var csv = new StringBuilder(Header).Append('\n');
        foreach (SimulatedNetwork network in networks)
        {
            foreach (SimulatedNode node in network.Nodes)
            {
                csv.AppendJoin(',', network.Name, network.About, Text(network.SourceVolts), node.Parent.ToString(CultureInfo.InvariantCulture),
                    Text(node.Ohms), Text(node.Watts), Text(node.Amperes), Text(node.LoadOhms), Text(node.Volts)).Append('\n');
            }
        }

        return csv.ToString();
    }

    /// <summary>A number that reads back to the same bits; nothing for null.</summary>
    public static string Text(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    private static SimulatedNode Node(string[] cells) => new(int.Parse(cells[3], CultureInfo.InvariantCulture),
        Number(cells[4]), Number(cells[5]), Number(cells[6]), NumberOrNull(cells[7]), NumberOrNull(cells[8]));

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static double? NumberOrNull(string text) => text.Length == 0 ? null : Number(text);
}
