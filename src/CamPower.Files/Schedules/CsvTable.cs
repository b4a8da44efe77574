using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using CsvHelper;
using CsvHelper.Configuration;

namespace CamPower.Files.Schedules;

/// <summary>A table as CSV, as RFC 4180 has it.</summary>
internal static class CsvTable
{
    internal static string Text(IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<string>> rows) =>
        Written(rows.Select(row => (IReadOnlyList<string>)[.. row.Select(Plain)]).Prepend(headings));

    internal static string Written(IEnumerable<IReadOnlyList<string>> rows)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" }, leaveOpen: true))
        {
            foreach (IReadOnlyList<string> cells in rows)
            {
                foreach (string cell in cells) csv.WriteField(cell);
                csv.NextRecord();
            }
        }

        return text.ToString();
    }

    // A spreadsheet takes what begins so for a formula. A negative number is none.
    private static string Plain(string cell) => cell.Length > 0 && cell[0] is ('=' or '+' or '-' or '@')
        && !double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? "'" + cell : cell;
}
