using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;

namespace SiteCheck;

/// <summary>What a short and an overload do at each output of a box, outputs with the same answer in one line.</summary>
internal static class FaultTable
{
    private const int Indent = 2;

    private const string Terminals = "short at terminals", FarEnd = "short at far end", TwiceTheLimit = "overload, 2 × limit";

    private static readonly string[] Kinds = [Terminals, FarEnd, TwiceTheLimit];

    public static void Write(Page page, IReadOnlyList<OutputFaults> outputs)
    {
        if (outputs.All(o => o.AtTerminals.Verdict == OperatingVerdict.None))
        {
            page.Text("Shorts: not checked. See \"Not stated\".", Indent);
            return;
        }

        int devices = outputs.Sum(o => o.Assessment.Devices.Count);
        foreach (IGrouping<string, OutputFaults> alike in outputs.GroupBy(o => o.Output.Protection?.Name ?? "protection not stated"))
        {
            page.Text($"Faults, {alike.Key}:", Indent);
            var table = new PlainTable("Output", "Fault", "Prospective A", "Limited A", "Protection", "Conductors", "Supply", "Other devices");
            foreach (FaultLine line in Lines(alike, devices)) table.Add(Cells(line));
            table.WriteTo(page);
        }
    }

    private static IEnumerable<FaultLine> Lines(IEnumerable<OutputFaults> outputs, int devices) => outputs
        .SelectMany(o => LinesOf(o, devices - o.Assessment.Devices.Count))
        .GroupBy(line => line.Answer).Select(alike => alike.Aggregate((one, other) => one.Joined(other)))
        .OrderBy(line => Array.IndexOf(Kinds, line.Kind)).ThenBy(line => line.Outputs[0]);

    private static IEnumerable<FaultLine> LinesOf(OutputFaults output, int others) =>
    [
        FaultLine.Short(output, output.AtTerminals, Terminals, others),
        FaultLine.Short(output, output.Weakest, FarEnd, others),
        FaultLine.Overload(output, output.OverloadOf(2 * output.Output.Limit), TwiceTheLimit),
    ];

    private static string[] Cells(FaultLine line) =>
    [
        Spoken.Numbers(line.Outputs),
        line.Kind,
        line.Prospective?.Amperes() ?? "",
        line.Flows?.Amperes() ?? "not known",
        line.Opening,
        line.Conductors,
        line.SupplyVolts?.Volts() ?? line.Supply,
        line.Others,
    ];
}
