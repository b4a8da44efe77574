using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;
using Spectre.Console;
using UnitsNet;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>What a short and an overload do at each output of a box, outputs with the same answer in one line.</summary>
internal static class FaultTable
{
    public const string Legend = """
        Faults are a short behind the terminals, one at the far end, and twice the limit
        of the output. Could A: what the resistances let flow; Flows A: what supply and
        protection make of it. "untimed": no data sheet gives the time. Supply, Others:
        what becomes of them while the short lasts. "?" is not declared.
        """;

    private const string Terminals = "terminals", FarEnd = "far end", TwiceTheLimit = "2x limit";

    private static readonly string[] Kinds = [Terminals, FarEnd, TwiceTheLimit];

    private static readonly Ratio Twice = Ratio.FromDecimalFractions(2);

    public static void Write(IAnsiConsole console, IReadOnlyList<OutputFaults> outputs)
    {
        string notDeclared = FaultWords.NotDeclared(outputs.Aggregate(FaultData.None, (all, o) => all | o.Missing));
        if (outputs.All(o => o.AtTerminals.Fault.Verdict == ClearingVerdict.None))
        {
            console.WriteIndented($"Faults: not known, for nobody declares {notDeclared}.");
            return;
        }

        int devices = outputs.Sum(o => o.Assessment.Devices.Count);
        foreach (IGrouping<string, OutputFaults> alike in outputs.GroupBy(o => o.Output.Protection?.Name ?? "protection not declared"))
        {
            console.WriteIndented($"Faults, {alike.Key}:");
            var table = new PlainTable("Out", "Fault", "Could A", "Flows A", "Protection", "Wires", "Supply", "Others");
            foreach (FaultLine line in Lines(alike, devices)) table.Add(Cells(line));
            table.Unwrapped(1, 2, 3, 4, 5, 6).WriteTo(console);
        }

        if (notDeclared.Length > 0) console.WriteIndented($"Not declared: {notDeclared}.");
    }

    private static IEnumerable<FaultLine> Lines(IEnumerable<OutputFaults> outputs, int devices) => outputs
        .SelectMany(o => LinesOf(o, devices - o.Assessment.Devices.Count))
        .GroupBy(line => line.Answer).Select(alike => alike.Aggregate((one, other) => one.Joined(other)))
        .OrderBy(line => Array.IndexOf(Kinds, line.Kind)).ThenBy(line => line.Outputs[0]);

    private static IEnumerable<FaultLine> LinesOf(OutputFaults output, int others) =>
    [
        FaultLine.Short(output, output.AtTerminals, Terminals, others),
        FaultLine.Short(output, output.Weakest, FarEnd, others),
        FaultLine.Overload(output, output.OverloadOf(Twice), TwiceTheLimit),
    ];

    private static string[] Cells(FaultLine line) =>
    [
        Numbers(line.Outputs),
        line.Kind,
        line.Prospective?.Amperes() ?? "",
        line.Flows?.Amperes() ?? "?",
        line.Opening,
        line.Wires,
        line.SupplyVolts?.Volts() ?? line.Supply,
        line.Others,
    ];

    // 3, 4, 5 and 8 are 3-5, 8.
    private static string Numbers(IReadOnlyList<int> outputs)
    {
        IEnumerable<IGrouping<int, int>> rows = outputs.Select((number, place) => (number, place)).GroupBy(x => x.number - x.place, x => x.number);
        return string.Join(", ", rows.Select(row => row.Count() == 1 ? Invariant($"{row.First()}") : Invariant($"{row.First()}-{row.Last()}")));
    }
}
