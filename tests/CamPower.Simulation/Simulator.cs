using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using CamPower.Tests.Circuits.Ngspice;

namespace CamPower.Simulation;

/// <summary>Runs ngspice on a netlist in batch mode.</summary>
internal static partial class Simulator
{
    private const int MostMilliseconds = 30_000;

    /// <summary>The voltages of the network's nodes, or null where the simulator finds no solution. [V]</summary>
    public static IReadOnlyList<double>? Solve(SimulatedNetwork network, string netlistPath) =>
        Solve(netlistPath, [.. Enumerable.Range(0, network.Nodes.Count).Select(Netlist.NodeName)]);

    /// <summary>The voltages that a netlist prints of some nodes, in their order, or null where the simulator finds no solution. [V]</summary>
    public static IReadOnlyList<double>? Solve(string netlistPath, IReadOnlyList<string> nodes)
    {
        string output = Run(netlistPath);
        Dictionary<string, double> printed = VoltageLine().Matches(output).ToDictionary(
            m => m.Groups["node"].Value, m => double.Parse(m.Groups["volts"].Value, NumberStyles.Float, CultureInfo.InvariantCulture));
        if (nodes.All(printed.ContainsKey)) return [.. nodes.Select(node => printed[node])];

        // Silence is no answer: only the simulator's own word counts as "no solution".
        return output.Contains("solution failed", System.StringComparison.OrdinalIgnoreCase)
            ? null
            : throw new InvalidDataException($"ngspice said neither a voltage nor that there is none:\n{output}");
    }

    /// <summary>What a netlist prints or measures, by the name that stands before it, in the order of the names.</summary>
    public static IReadOnlyList<double> Values(string netlistPath, IReadOnlyList<string> names)
    {
        Dictionary<string, double> said = ValueLine().Matches(Run(netlistPath)).ToDictionary(
            m => m.Groups["name"].Value, m => double.Parse(m.Groups["value"].Value, NumberStyles.Float, CultureInfo.InvariantCulture));
        return [.. names.Select(name => said[name])];
    }

    /// <summary>The same of a netlist that is in no file yet.</summary>
    public static IReadOnlyList<double>? SolveText(string netlist, IReadOnlyList<string> nodes)
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, netlist);
            return Solve(file, nodes);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static string Run(string netlistPath)
    {
        using var process = Process.Start(new ProcessStartInfo("ngspice", ["-b", netlistPath])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        })!;
        process.StandardInput.Close();
        System.Threading.Tasks.Task<string> errors = process.StandardError.ReadToEndAsync();
        System.Threading.Tasks.Task<string> output = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(MostMilliseconds))
        {
            process.Kill();
            throw new System.TimeoutException($"ngspice did not finish {netlistPath}.");
        }

        return output.GetAwaiter().GetResult() + errors.GetAwaiter().GetResult();
    }

    [GeneratedRegex(@"^v\((?<node>[^)]+)\) = (?<volts>\S+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex VoltageLine();

    [GeneratedRegex(@"^(?<name>[a-z()]+) += +(?<value>[-+.0-9e]+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex ValueLine();
}
