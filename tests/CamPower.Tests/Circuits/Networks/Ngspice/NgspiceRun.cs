using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Text.RegularExpressions;

namespace CamPower.Tests.Circuits.Networks.Ngspice;

/// <summary>Runs a deck in ngspice and reads the voltages that it prints.</summary>
internal static partial class NgspiceRun
{
    /// <summary>Voltage of each node printed, by its name in the deck; empty where the simulator found no operating point.</summary>
    internal static IReadOnlyDictionary<string, double> Solve(string deck)
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, deck);
            return Read(Output(file));
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static string Output(string file)
    {
        var start = new ProcessStartInfo("ngspice", $"-b {file}") { RedirectStandardOutput = true, RedirectStandardError = true };
        using Process process = Process.Start(start) ?? throw new InvalidOperationException("ngspice did not start.");
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }

    private static Dictionary<string, double> Read(string output)
    {
        var volts = new Dictionary<string, double>(StringComparer.Ordinal);
        if (output.Contains("failed", StringComparison.OrdinalIgnoreCase)) return volts;
        foreach (Match match in Printed().Matches(output))
        {
            volts[match.Groups["node"].Value] = double.Parse(match.Groups["volts"].Value, CultureInfo.InvariantCulture);
        }

        return volts;
    }

    [GeneratedRegex(@"^v\((?<node>[^)]+)\) = (?<volts>\S+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Printed();
}
