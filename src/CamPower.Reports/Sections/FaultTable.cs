using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Table of the effect of a short at outputs; outputs of the same answer share a line.</summary>
internal static class FaultTable
{
    /// <summary>The outputs of one box.</summary>
    internal static Block Of(DistributionBox box, IReadOnlyList<OutputFaults> outputs) =>
        Of($"Shorts on the outputs of {box}", "Output", outputs, alike => NumberRows.Text(alike.Select(o => o.Output.Number)));

    /// <summary>The outputs of several boxes, most often one of each.</summary>
    internal static Block Of(IReadOnlyList<OutputFaults> outputs) =>
        Of("Shorts on their outputs", "Box or adapter", outputs,
            alike => string.Join(", ", alike.Select(o => o.Box.Name).Distinct(StringComparer.Ordinal)));

    private static DataTable Of(string caption, string place, IReadOnlyList<OutputFaults> outputs,
        Func<IEnumerable<OutputFaults>, string> places)
    {
        Dictionary<DistributionBox, int> devices = outputs.GroupBy(o => o.Box)
            .ToDictionary(box => box.Key, box => box.Sum(o => o.Assessment.Devices.Count));
        IGrouping<string, (OutputFaults Output, string[] Answer)>[] alike =
            [.. outputs.Select(o => (Output: o, Answer: Answer(o, devices[o.Box])))
                .GroupBy(x => string.Join('\n', x.Answer), StringComparer.Ordinal)];
        return new DataTable(caption,
            [new(place), new("Protective device"), new("Smallest short"), new("Conductors"), new("Supply during it"),
                new("Others that go dark")],
            [.. alike.Select(group => (string[])[places(group.Select(x => x.Output)), .. group.First().Answer])]);
    }

    private static string[] Answer(OutputFaults output, int allDevices)
    {
        SupplyDuringFault worst = output.Shorts.Select(s => s.Supply).OrderByDescending(r => r.Dark.Count)
            .ThenByDescending(r => r.BelowWindow.Count).First();
        return
        [
            output.Output.Protection?.Name ?? "not stated",
            output.Weakest.Verdict == OperatingVerdict.None ? "not known, see Not stated" : WithoutPlace(output.Weakest),
            Conductors(output),
            worst.ToString(),
            Dark(worst, allDevices - output.Assessment.Devices.Count),
        ];
    }

    private static string Dark(SupplyDuringFault rail, int others)
    {
        if (others == 0) return Said.Nothing;
        if (rail.State == SupplyState.Unknown) return "not known";
        if (rail.Dark.Count == others) return "all";
        string names = string.Join(", ", rail.Dark.Select(d => d.Name).Concat(rail.BelowWindow.Select(d => $"perhaps {d.Name}")));
        return names.Length == 0 ? "none" : names;
    }

    private static string WithoutPlace(ShortCircuit fault) => fault.ToString()[(fault.Place.Length + ": ".Length)..];

    private static string Conductors(OutputFaults output)
    {
        HashSet<WithstandVerdict> verdicts = [.. output.Shorts.Select(s => s.WithstandVerdict)];
        if (verdicts.Contains(WithstandVerdict.DoesNotWithstand)) return "do not withstand it";
        if (verdicts.Contains(WithstandVerdict.Unknown)) return "not known";
        return verdicts.Contains(WithstandVerdict.HotterThanInService) ? "get hotter than allowed in service" : "withstand it";
    }
}
