using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower.Files.Formats;
using CsvHelper;
using CsvHelper.Configuration;

namespace CamPower.Files.Schedules;

/// <summary>The rows of a schedule as text, each cell with its place; what is wrong with the table itself is noted.</summary>
internal sealed class ScheduleTable
{
    private const int MostQuoted = 40;

    private static readonly char[] Separators = [';', '\t', ','];

    private readonly Dictionary<string, (int Column, string? Unit)> _columns = new(StringComparer.Ordinal);
    private readonly SiteReading _file;

    private ScheduleTable(SiteReading file) => _file = file;

    /// <summary>The rows that are not blank, with their numbers.</summary>
    internal List<(int Number, string[] Cells)> Rows { get; } = [];

    /// <summary>Reads a table; null where there is none to go on with, which is noted.</summary>
    internal static ScheduleTable? Read(string csv, SiteReading file)
    {
        // A spreadsheet may write a byte-order mark before the text.
        var table = new ScheduleTable(file);
        if (!table.ReadRows(csv.TrimStart('\uFEFF'))) return null;
        if (table.Rows.Count > 0) return table.HasItsColumns() ? table : null;
        file.Add("the schedule is empty", new Cell(1, 1, string.Empty));
        return null;
    }

    /// <summary>Whether a column is there.</summary>
    internal bool Has(string column) => _columns.ContainsKey(column);

    /// <summary>The place of a cell.</summary>
    internal Cell CellAt(int row, string column) => new(row, Has(column) ? _columns[column].Column + 1 : 1, column);

    /// <summary>The text of a cell; empty where the row or the table has none. A bare number takes the unit of its heading.</summary>
    internal string TextAt(string[] cells, string column)
    {
        if (!_columns.TryGetValue(column, out (int Column, string? Unit) at) || at.Column >= cells.Length) return string.Empty;
        string text = cells[at.Column];
        bool isBare = at.Unit is not null && text.Length > 0 && text.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or '-' or '+' or ' ');
        return isBare ? $"{text.Trim()} {at.Unit}" : text;
    }

    private bool ReadRows(string text)
    {
        int badRow = 0;
        var format = new CsvConfiguration(System.Globalization.CultureInfo.InvariantCulture)
        {
            Delimiter = SeparatorOf(text).ToString(),
            IgnoreBlankLines = false,
            BadDataFound = bad => badRow = badRow > 0 ? badRow : bad.Context.Parser!.Row,
        };
        using var parser = new CsvParser(new StringReader(text), format);
        while (parser.Read())
        {
            string[] cells = parser.Record!;
            if (!Array.TrueForAll(cells, string.IsNullOrWhiteSpace)) Rows.Add((parser.Row, cells));
        }

        if (badRow == 0) return true;
        _file.Add("a quotation mark is not closed, or is inside a cell; write it twice and put the cell in quotation marks",
            new Cell(badRow, 1, string.Empty));
        return false;
    }

    // What is most often between the headings.
    private static char SeparatorOf(string text)
    {
        string headings = text.Split('\n', 2)[0];
        return Separators.MaxBy(separator => headings.Count(c => c == separator));
    }

    private bool HasItsColumns()
    {
        (int number, string[] headings) = Rows[0];
        Rows.RemoveAt(0);
        for (int i = 0; i < headings.Length; i++)
        {
            (string name, string? unit) = Heading(headings[i]);
            if (!ScheduleColumns.All.Contains(name, StringComparer.Ordinal)) continue;
            if (!_columns.TryAdd(name, (i, unit)))
            {
                _file.Add($"the column {Phrase.Quoted(name)} is there twice", new Cell(number, i + 1, name));
            }
        }

        string[] unknown = [.. headings.Where(h => !_columns.ContainsKey(Heading(h).Name))];
        string[] missing = [.. ScheduleColumns.Required.Where(column => !Has(column))];
        foreach (string column in missing)
        {
            _file.Add($"there is no column {Phrase.Quoted(column)}{Instead(column, unknown)}", new Cell(number, 1, string.Empty));
        }

        bool hasModels = Has(ScheduleColumns.Model) || Has(ScheduleColumns.Watts);
        if (!hasModels) _file.Add("there is no column 'model', and none 'watts'", new Cell(number, 1, string.Empty));
        NoteSplitRows(headings.Length);
        return missing.Length == 0 && hasModels;
    }

    private static string Instead(string column, string[] unknown) =>
        NearestName.Of(column, unknown) is string nearest ? $"; did you mean it by {Phrase.Quoted(nearest)}?" : string.Empty;

    // A comma inside a number makes two cells of one where commas separate them.
    private void NoteSplitRows(int width)
    {
        foreach ((int number, string[] cells) in Rows.Where(row => row.Cells.Skip(width).Any(c => c.Length > 0)))
        {
            string text = string.Join(',', cells);
            _file.Add(FormattableString.Invariant($"{cells.Length} cells, but {width} headings: write a decimal point, ")
                + "not a comma, and put a cell with a comma in quotation marks; the row is "
                + (text.Length <= MostQuoted ? $"'{text}'" : $"'{text[..MostQuoted]}...'"), new Cell(number, width + 1, string.Empty));
        }

        Rows.RemoveAll(row => row.Cells.Skip(width).Any(c => c.Length > 0));
    }

    // "Length (ft)" is the column of lengths, in feet where a cell states no unit; watts are watts.
    private static (string Name, string? Unit) Heading(string text)
    {
        string heading = text.Trim();
        int open = heading.IndexOf('(', StringComparison.Ordinal);
        bool hasUnit = open > 0 && heading.EndsWith(')');
        string name = (hasUnit ? heading[..open] : heading).Trim().ToLowerInvariant();
        string? usual = string.Equals(name, ScheduleColumns.Watts, StringComparison.Ordinal) ? "W" : null;
        return (name, hasUnit ? heading[(open + 1)..^1].Trim() : usual);
    }
}
