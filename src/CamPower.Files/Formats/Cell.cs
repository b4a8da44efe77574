using System;
using System.Globalization;

namespace CamPower.Files.Formats;

/// <summary>A cell of a table, by which a place that was read from it is found.</summary>
/// <param name="Row">The row, from 1, as a spreadsheet counts.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="Heading">What the column is called.</param>
internal sealed record Cell(int Row, int Column, string Heading)
{
    /// <summary>Name of the table.</summary>
    internal string Table { get; init; } = "schedule";

    /// <summary>The place in words: "schedule, row 4, column F (length)".</summary>
    internal string Path => Heading.Length == 0
        ? string.Create(CultureInfo.InvariantCulture, $"{Table}, row {Row}")
        : string.Create(CultureInfo.InvariantCulture, $"{Table}, row {Row}, column {Letters(Column)} ({Heading})");

    // A to Z, then AA.
    private static string Letters(int column) =>
        column <= 26 ? ((char)('A' + column - 1)).ToString() : Letters((column - 1) / 26) + Letters(((column - 1) % 26) + 1);
}
