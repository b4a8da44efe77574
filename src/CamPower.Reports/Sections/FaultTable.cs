using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>What a short does at each output of a box.</summary>
internal static class FaultTable
{
    internal static Block Of(DistributionBox box, IReadOnlyList<OutputFaults> outputs) =>
        outputs.All(o => o.Weakest.Verdict == OperatingVerdict.None) && outputs.Select(o => o.Weakest.Missing).Distinct().Count() == 1
            ? new Paragraph($"What a short does on these outputs is {WithoutPlace(outputs[0].Weakest)}.")
            : Table(box, outputs);

    private static DataTable Table(DistributionBox box, IReadOnlyList<OutputFaults> outputs) => new(
        $"Shorts on what the outputs of {box} feed",
        [new("Output"), new("The short that is hardest to clear"), new("Conductors, wherever it is"), new("Supply meanwhile, at worst"), new("Others that go dark")],
        [.. outputs.Select(o => Row(o, outputs.Sum(all => all.Assessment.Devices.Count)))]);

    private static IReadOnlyList<string> Row(OutputFaults output, int others)
    {
        RailDuringFault worst = output.Shorts.Select(s => s.Rail).OrderByDescending(r => r.Dark.Count).ThenByDescending(r => r.BelowWindow.Count).First();
        return
        [
            Invariant($"{output.Output.Number}"),
            output.Weakest.ToString(),
            Conductors(output),
            worst.ToString(),
            Dark(worst, others - output.Assessment.Devices.Count),
        ];
    }

    private static string Dark(RailDuringFault rail, int others)
    {
        if (rail.State == RailState.Unknown) return "not known";
        if (rail.Dark.Count == others) return others == 0 ? Said.Nothing : "all";
        string names = string.Join(", ", rail.Dark.Select(d => d.Name).Concat(rail.BelowWindow.Select(d => $"perhaps {d.Name}")));
        return names.Length == 0 ? "none" : names;
    }

    private static string WithoutPlace(ShortCircuit fault) => fault.ToString()[(fault.Place.Length + ": ".Length)..];

    private static string Conductors(OutputFaults output)
    {
        HashSet<WithstandVerdict> verdicts = [.. output.Shorts.Select(s => s.WithstandVerdict)];
        if (verdicts.Contains(WithstandVerdict.DoesNotStand)) return "do not stand it";
        if (verdicts.Contains(WithstandVerdict.Unknown)) return "not known";
        return verdicts.Contains(WithstandVerdict.HotterThanInService) ? "hotter than they may be in service" : "stand it";
    }
}
