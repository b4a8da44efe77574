using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Commissioning;
using UnitsNet;

namespace CamPower.Reports.Writing;

/// <summary>A diagnosis in plain sentences: causes by probability, what speaks for and against each, and the next reading.</summary>
internal static class DiagnosisText
{
    private const int MostGroups = 3, MostReadings = 2;
    private const double LeastShown = 0.01;

    /// <summary>What no advice ever asks for.</summary>
    internal const string Closing =
        "Read at extra-low voltage only. Follow the local code; mains and batteries are for a licensed electrician.";

    internal static string Of(DiagnosisReport report) => string.Join('\n', Lines(report)) + "\n";

    /// <summary>The groups that are shown: the first, those of at least 1 %, and every danger of at least 1 %.</summary>
    internal static IReadOnlyList<CauseGroup> Shown(Diagnosis diagnosis)
    {
        CauseGroup[] likely = [.. diagnosis.Groups.Where((g, i) => i == 0 || g.Probability.DecimalFractions >= LeastShown)];
        return [.. likely.Where((g, i) => i < MostGroups || g.IsDanger)];
    }

    /// <summary>The readings that speak for a group or against it, those that are furthest off first.</summary>
    internal static IEnumerable<ReadingPrediction> Speaking(CauseGroup group, bool isFor) => group.Predictions
        .Where(p => isFor ? p.SpeaksFor : p.SpeaksAgainst).OrderByDescending(p => isFor ? 0 : Math.Abs(p.OffBy));

    private static IEnumerable<string> Lines(DiagnosisReport report)
    {
        Diagnosis diagnosis = report.Diagnosis;
        IReadOnlyList<CauseGroup> shown = Shown(diagnosis);
        if (diagnosis.MustIsolateFirst) yield return DangerFirst(shown);
        yield return "Most probable causes:";
        string safety = string.Empty;
        foreach (CauseGroup group in shown)
        {
            foreach (string line in Group(report, group, isFirst: group == shown[0])) yield return line;
            if (!string.Equals(group.Safety, safety, StringComparison.Ordinal)) yield return $"    Safety: {group.Safety}";
            safety = group.Safety;
        }

        if (Others(diagnosis, shown) is string others) yield return others;
        foreach (string line in Next(diagnosis, shown)) yield return line;
        if (diagnosis.Unused.Count > 0) yield return LeftOut(diagnosis.Unused);
        yield return Closing;
    }

    private static string DangerFirst(IReadOnlyList<CauseGroup> shown) => shown.FirstOrDefault(g => g.IsDanger) is CauseGroup danger
        ? $"Isolate first: {danger.Name} is more than 1 % likely."
        : "Isolate first: a danger is more than 1 % likely.";

    private static IEnumerable<string> Group(DiagnosisReport report, CauseGroup group, bool isFirst)
    {
        yield return $"  {Percent(group.Probability)}: {Named(group)}.";
        if (group.Separates.Length > 0) yield return $"    These readings do not tell these causes apart. {group.Separates}";
        foreach (bool isFor in (bool[])[true, false])
        {
            ReadingPrediction[] speaking = [.. Speaking(group, isFor)];
            int most = isFirst ? MostReadings : 1;
            foreach (ReadingPrediction reading in speaking.Take(most)) yield return Line(report, reading, isFor);
            if (speaking.Length > most) yield return More(speaking.Length - most, isFor);
        }

        yield return $"    To do: {group.ToDo}";
    }

    private static string Line(DiagnosisReport report, ReadingPrediction said, bool isFor)
    {
        ExpectedReading expected = report.Record.Sheet.Expect(said.Reading.Point);
        string fits = $"{NumberOf(said.Predicted)} with this cause, {NumberOf(expected.Expected)} as designed";
        return $"    {(isFor ? "For" : "Against")} it: {said.Reading.Point}: {NumberOf(said.Reading.Value)} read; expected {fits}.";
    }

    private static string More(int count, bool isFor) => FormattableString.Invariant(
        $"    {count} more {(count == 1 ? "reading speaks" : "readings speak")} {(isFor ? "for" : "against")} it.");

    private static IEnumerable<string> Next(Diagnosis diagnosis, IReadOnlyList<CauseGroup> shown)
    {
        if (diagnosis.IsSettled)
        {
            yield return "Settled: one group of causes is at least 95 % likely, and no other danger is more than 1 % likely.";
            yield break;
        }

        if (diagnosis.Next is not NextReading next)
        {
            yield return "Not settled: no reading of the sheet separates the rest.";
            yield break;
        }

        yield return $"Next reading: {next.Point}.";
        yield return $"    To do: {next.Step}";
        yield return $"    Safety: {next.Safety}";
        foreach (IGrouping<string, CauseGroup> value in shown.GroupBy(g => NumberOf(g.Predict(next.Point)), StringComparer.Ordinal))
        {
            yield return $"    Expect {value.Key} for: {string.Join("; ", value.Select(Named))}.";
        }
    }

    private static string LeftOut(IReadOnlyList<MeterReading> unused) =>
        FormattableString.Invariant($"Not used here: {string.Join("; ", unused.Take(MostReadings).Select(r => r.Point))}")
        + (unused.Count > MostReadings ? FormattableString.Invariant($" and {unused.Count - MostReadings} more.") : ".");

    private static string? Others(Diagnosis diagnosis, IReadOnlyList<CauseGroup> shown)
    {
        CauseGroup[] others = [.. diagnosis.Groups.Where(g => g.Probability.DecimalFractions >= LeastShown).Except(shown)];
        return others.Length == 0 ? null : FormattableString.Invariant(
            $"  {others.Length} more at 1 % or above; the likeliest: {Percent(others[0].Probability)}, {Named(others[0])}.");
    }

    private static string Named(CauseGroup group) => group.Place.Length > 0 ? $"{group.Name}, {group.Place}" : group.Name;

    private static string Percent(Ratio share) => share.Percent switch
    {
        > 99.5 => "more than 99 %",
        < 1 => "less than 1 %",
        double percent => FormattableString.Invariant($"{percent:0} %"),
    };

    private static string NumberOf(IQuantity? quantity) => quantity switch
    {
        null => "over range",
        ElectricPotential volts => FormattableString.Invariant($"{volts.Volts:0.00} V"),
        ElectricCurrent amperes => FormattableString.Invariant($"{amperes.Amperes:0.00} A"),
        ElectricResistance { Ohms: > 1e6 } open => FormattableString.Invariant($"{open.Megaohms:0.0} MΩ"),
        ElectricResistance { Ohms: > 1e3 } high => FormattableString.Invariant($"{high.Kiloohms:0.0} kΩ"),
        ElectricResistance ohms => FormattableString.Invariant($"{ohms.Ohms:0.00} Ω"),
        _ => quantity.ToString(null, System.Globalization.CultureInfo.InvariantCulture),
    };
}
