using System;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Text;
using System.Text.RegularExpressions;
using CamPower.Circuits;

namespace CamPower.Networks.Benchmarks;

/// <summary>The simulator's own analysis time for a network.</summary>
internal static partial class Ngspice
{
    /// <summary>Total analysis time as ngspice reports it, parsing and set-up of the deck left out. [ms]</summary>
    internal static double AnalysisMilliseconds(DcNetwork network)
    {
        string file = Path.GetTempFileName();
        File.WriteAllText(file, Deck(network));
        using Process process = Process.Start(new ProcessStartInfo("ngspice", $"-b {file}") { RedirectStandardOutput = true, RedirectStandardError = true })!;
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        File.Delete(file);
        Match match = AnalysisTime().Match(output);
        if (!match.Success || output.Contains("failed", StringComparison.OrdinalIgnoreCase)) throw new InvalidOperationException("ngspice found no operating point.");
        return 1e3 * double.Parse(match.Groups["seconds"].Value, CultureInfo.InvariantCulture);
    }

    // Loads draw P/V above half the source voltage, so that the simulator, which starts at 0 V, finds the same root;
    // naming every node in .nodeset instead would make it quadratic.
    private static string Deck(DcNetwork network)
    {
        var deck = new StringBuilder("* network\n");
        foreach (NetworkSource source in network.Sources)
        {
            Line(deck, $"V{source.Name} emf {Node(network, source.NegativeNode)} DC {source.Voltage.Volts:R}");
            Line(deck, $"R{source.Name} emf {Node(network, source.PositiveNode)} {Math.Max(1e-6, source.Resistance.Ohms):R}");
        }

        foreach (NetworkBranch branch in network.Branches)
        {
            Line(deck, $"R{branch.Name} {Node(network, branch.From)} {Node(network, branch.To)} {branch.Resistance.Ohms:R}");
        }

        double half = network.Sources[0].Voltage.Volts / 2;
        foreach (NetworkLoad load in network.Loads)
        {
            string volts = $"V({Node(network, load.PositiveNode)},{Node(network, load.NegativeNode)})";
            Line(deck, $"B{load.Name} {Node(network, load.PositiveNode)} {Node(network, load.NegativeNode)} I={(double)load.Load.PowerComponent.Watts:R}/max({volts},{half:R})");
        }

        return deck.Append(".options reltol=1e-10 abstol=1e-15 vntol=1e-12 itl1=1000 acct\n.op\n.end\n").ToString();
    }

    private static string Node(DcNetwork network, string node) => node == network.Reference ? "0" : node;

    private static void Line(StringBuilder deck, FormattableString line) => deck.Append(FormattableString.Invariant(line)).Append('\n');

    [GeneratedRegex(@"Total analysis time \(seconds\) = (?<seconds>\S+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex AnalysisTime();
}
