using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Commissioning;
using CamPower.Reports.Contents;
using UnitsNet;

namespace CamPower.Reports.Sections;

/// <summary>The parts of a commissioning sheet or record: head, what keeps it safe, the readings in their order, the signature.</summary>
internal static class CommissioningSections
{
    private const string ToFillIn = "____________", Energized = "Box on, nothing connected: the set point", Explained =
        "Take the readings in this order. A reading outside its band differs from the site file: find out why before you go on.";

    internal static IEnumerable<Section> Of(CommissioningRecord record)
    {
        if (record.Sheet.Dangers.Count > 0) yield return Stop(record.Sheet.Dangers);
        yield return Head(record);
        yield return Safety();
        int number = 0;
        foreach (IGrouping<string, JudgedReading> part in record.Lines.GroupBy(HeadingOf, StringComparer.Ordinal))
        {
            JudgedReading[] lines = [.. part];
            yield return new Section(part.Key, [Table(part.Key, lines, number)]);
            number += lines.Length;
        }

        yield return Signature(record);
    }

    // The sheet is carried to the site alone: it says itself where to stop, and why.
    private static Section Stop(IReadOnlyList<Finding> dangers) => new("Do not energize",
    [
        new Paragraph($"The plan has {Said.Severity(Severity.Danger, dangers.Count)}. "
            + $"Stop before \"{Energized}\": take only the readings on dead wires.", IsStrong: true),
        new ItemList([.. dangers.Select(danger => $"{danger.About.Name}: {danger.Message} Fix: {danger.Remedy}")]),
    ]);

    private static Section Head(CommissioningRecord record)
    {
        CommissioningSheet sheet = record.Sheet;
        List<Fact> facts =
        [
            new("Site", sheet.Site.Name),
            new("Meter", FormattableString.Invariant(
                $"{sheet.Meter}: volts {sheet.Meter.Volts}, amperes {sheet.Meter.Amperes}, ohms {sheet.Meter.Ohms}")),
            new("Temperatures", sheet.At.ToString()),
        ];
        if (record.Readings.Count == 0) return new Section("What this is", [new Paragraph(Explained), new Facts(facts)]);
        facts.Add(new("Readings", Counts(record)));
        return new Section("Result", [new Paragraph(Verdict(record), IsStrong: true), new Facts(facts)]);
    }

    private static string Verdict(CommissioningRecord record) => record.IsAccepted
        ? "Every reading was taken and is inside its band."
        : record.Count(ReadingVerdict.Outside) + record.Count(ReadingVerdict.Impossible) == 0
            ? "Not finished: no reading is outside its band, and some are not taken."
            : "Not accepted: some readings are outside their band.";

    private static string Counts(CommissioningRecord record) => string.Join(", ",
        ((ReadingVerdict[])[ReadingVerdict.Inside, ReadingVerdict.Outside, ReadingVerdict.Impossible, ReadingVerdict.NotRead])
        .Select(verdict => FormattableString.Invariant($"{record.Count(verdict)} {WordOf(verdict).ToLowerInvariant()}")));

    private static Section Safety() => new("Before you begin",
    [
        new ItemList(
        [
            "Work on the mains side is for a licensed electrician. Follow the local code.",
            "Never put a lead to energized mains. Keep covers of mains parts closed.",
            "Never open a battery circuit while anything draws from it.",
            "Never work alone on a ladder.",
            "Remove every jumper before the box is switched on.",
        ]),
    ]);

    private static DataTable Table(string caption, JudgedReading[] lines, int before) => new(caption,
        [
            new("No.", IsNumber: true), new("Reading"), new("Do"), new("Safety"), new("Expected", IsNumber: true),
            new("Band", IsNumber: true), new("Read", IsNumber: true), new("Verdict"),
        ],
        [.. lines.Select((line, i) => Row(line, before + i + 1))]);

    private static IReadOnlyList<string> Row(JudgedReading line, int number)
    {
        ExpectedReading expected = line.Expected;
        return
        [
            number.ToString(CultureInfo.InvariantCulture), $"{PlainText.Sentence(expected.Point.What)}, {expected.Point.Where}",
            expected.Step, expected.Safety, expected.Expected is IQuantity value ? Number(value) : ExpectedWord(expected), Band(expected),
            line.Reading is MeterReading read ? read.Value is IQuantity shown ? Number(shown) : "over range" : ToFillIn,
            line.Reading is null ? string.Empty : WordOf(line.Verdict),
        ];
    }

    private static string ExpectedWord(ExpectedReading expected) => expected.Highest is null ? "open" : "device cannot stay on";

    private static string Band(ExpectedReading expected) => expected.Highest is IQuantity highest
        ? $"{Number(expected.Lowest)} to {Number(highest)}{(IsTooWide(expected) ? " (too wide to judge)" : "")}"
        : $"at least {Number(expected.Lowest)}";

    // What takes no current at all is inside such a band.
    private static bool IsTooWide(ExpectedReading expected) =>
        expected is { Lowest: ElectricCurrent { Amperes: <= 0 }, Expected: not ElectricCurrent { Amperes: <= 0 } };

    // Meters show hundredths; megohms are for open pairs.
    private static string Number(IQuantity quantity) => quantity switch
    {
        ElectricPotential volts => FormattableString.Invariant($"{volts.Volts:0.00} V"),
        ElectricCurrent amperes => FormattableString.Invariant($"{amperes.Amperes:0.00} A"),
        ElectricResistance { Ohms: > 1e5 } open => FormattableString.Invariant($"{open.Megaohms:0.0} MΩ"),
        ElectricResistance ohms => FormattableString.Invariant($"{ohms.Ohms:0.00} Ω"),
        _ => Said.Quantity(quantity),
    };

    private static string HeadingOf(JudgedReading line) => line.Expected.Point.State switch
    {
        ReadingState.Dead => "Dead and unplugged: no short",
        ReadingState.FarEndJumpered or ReadingState.JumperRemoved => "Far end jumpered, then open again: the loop",
        ReadingState.Unloaded => Energized,
        ReadingState.DeviceUnplugged or ReadingState.Running => "Output by output: polarity, then running",
        _ => "Infrared forced on: the light sensors covered",
    };

    private static string WordOf(ReadingVerdict verdict) => verdict switch
    {
        ReadingVerdict.NotRead => "not read",
        ReadingVerdict.Inside => "inside",
        ReadingVerdict.Outside => "OUTSIDE",
        _ => "IMPOSSIBLE",
    };

    private static Section Signature(CommissioningRecord record) => new("Signature",
    [
        new Facts(
        [
            new("Read by", record.By ?? ToFillIn + ToFillIn),
            new("Date", record.On ?? ToFillIn),
            new("Signature", ToFillIn + ToFillIn),
        ]),
    ]);
}
