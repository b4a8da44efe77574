using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text.Json;
using CamPower.Commissioning;
using CamPower.Files.Formats;
using CsvHelper;
using CsvHelper.Configuration;
using UnitsNet;

namespace CamPower.Files.Readings;

/// <summary>Readings as a table: read as if each row were an object of a JSON file, and written with what is expected.</summary>
internal static class ReadingTable
{
    private const string Table = "readings";

    private static readonly char[] Separators = [';', '\t', ','];

    /// <summary>Columns that are written for the person who fills in the rest.</summary>
    private static readonly string[] Expected = ["expected", "from", "to", "verdict", "step", "safety"];

    /// <summary>The place of the whole table; null where there is none to go on with, which is noted.</summary>
    internal static Place? Read(string csv, SiteReading file)
    {
        if (Rows(csv.TrimStart('\uFEFF'), file) is not { } rows) return null;
        (int number, string[] headings) = rows[0];
        string[] names = Array.ConvertAll(headings, h => h.Trim().ToLowerInvariant());
        string[] missing = [.. ReadingFormat.Required.Except(names, StringComparer.Ordinal)];
        foreach (string column in missing) file.Add($"there is no column {Phrase.Quoted(column)}", At(number, 1, string.Empty));
        if (missing.Length > 0) return null;
        var root = new Place(file, null, null, 0, 0, JsonTokenType.StartObject, null);
        _ = new Place(file, root, "formatVersion", 0, 0, JsonTokenType.Number, "1");
        var list = new Place(file, root, ReadingFormat.List, 0, 0, JsonTokenType.StartArray, null);
        foreach ((int row, string[] cells) in rows.Skip(1)) AddRow(list, row, cells, names);
        return root;
    }

    /// <summary>The table of a record: the dangers of the plan, then each line of its sheet, with what was read.</summary>
    internal static string Text(CommissioningRecord record)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" }, leaveOpen: true))
        {
            string[] headings = [.. ReadingFormat.Columns, .. Expected];
            foreach (string[] cells in record.Sheet.Dangers.Select(Stop).Concat(record.Lines.Select(Cells)).Prepend(headings))
            {
                foreach (string cell in cells) csv.WriteField(cell);
                csv.NextRecord();
            }
        }

        return text.ToString();
    }

    // A row without a value is passed over when the table is read back.
    private static string[] Stop(Finding danger) =>
    [
        "DO NOT ENERGIZE", danger.About.Name, .. Enumerable.Repeat(string.Empty, ReadingFormat.Columns.Length + Expected.Length - 4),
        $"Stop before a box is switched on. {danger.Remedy}", danger.Message,
    ];

    private static string[] Cells(JudgedReading line)
    {
        ExpectedReading expected = line.Expected;
        MeterReading? reading = line.Reading;
        return
        [
            expected.Point.What, expected.Point.Where, ReadingFormat.TextOf(expected.Point.State),
            reading is null ? string.Empty : ReadingFormat.TextOf(reading), reading?.Meter ?? string.Empty, reading?.Time ?? string.Empty,
            reading?.Remark ?? string.Empty, Rounded(expected.Expected), Rounded(expected.Lowest), Rounded(expected.Highest),
            reading is null ? string.Empty : line.Verdict.ToString().ToLowerInvariant(), expected.Step, expected.Safety,
        ];
    }

    // Meters show hundredths; megohms are for open pairs.
    private static string Rounded(IQuantity? quantity) => quantity switch
    {
        ElectricPotential volts => FormattableString.Invariant($"{volts.Volts:0.00} V"),
        ElectricCurrent amperes => FormattableString.Invariant($"{amperes.Amperes:0.00} A"),
        ElectricResistance { Ohms: > 1e5 } open => FormattableString.Invariant($"{open.Megaohms:0.0} Mohm"),
        ElectricResistance ohms => FormattableString.Invariant($"{ohms.Ohms:0.00} ohm"),
        _ => string.Empty,
    };

    // A row whose value is empty was not read.
    private static void AddRow(Place list, int row, string[] cells, string[] names)
    {
        int value = Array.IndexOf(names, ReadingFormat.Value);
        if (value >= cells.Length || string.IsNullOrWhiteSpace(cells[value])) return;
        var reading = new Place(list.File, list, null, 0, 0, JsonTokenType.StartObject, null) { Cell = At(row, 1, string.Empty) };
        foreach (string column in ReadingFormat.Columns)
        {
            int at = Array.IndexOf(names, column);
            string text = at < 0 || at >= cells.Length ? string.Empty : cells[at].Trim();
            if (text.Length == 0) continue;
            _ = new Place(list.File, reading, column, 0, 0, JsonTokenType.String, text) { Cell = At(row, at + 1, column) };
        }
    }

    private static List<(int Number, string[] Cells)>? Rows(string text, SiteReading file)
    {
        int badRow = 0;
        var rows = new List<(int Number, string[] Cells)>();
        var format = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = Separators.MaxBy(separator => text.Split('\n', 2)[0].Count(c => c == separator)).ToString(),
            IgnoreBlankLines = false,
            BadDataFound = bad => badRow = badRow > 0 ? badRow : bad.Context.Parser!.Row,
        };
        using var parser = new CsvParser(new StringReader(text), format);
        while (parser.Read())
        {
            string[] cells = parser.Record!;
            if (!Array.TrueForAll(cells, string.IsNullOrWhiteSpace)) rows.Add((parser.Row, cells));
        }

        if (badRow > 0) file.Add(
            "a quotation mark is not closed, or is inside a cell; write it twice and put the cell in quotation marks",
            At(badRow, 1, string.Empty));
        else if (rows.Count == 0) file.Add("the table is empty", At(1, 1, string.Empty));
        else return rows;
        return null;
    }

    private static Cell At(int row, int column, string heading) => new(row, column, heading) { Table = Table };
}
