using System;

namespace CamPower.Files;

/// <summary>One thing that is wrong in a site file, or a file of readings, and where.</summary>
/// <remarks>Immutable.</remarks>
public sealed class SiteFileError
{
    internal SiteFileError(string path, int line, int column, string message)
    {
        Path = path;
        Line = line;
        Column = column;
        Message = message;
    }

    internal SiteFileError(Formats.Cell cell, string message)
        : this(cell.Path, cell.Row, cell.Column, message) => IsOfSchedule = true;

    /// <summary>Whether it is in a schedule (<see cref="SiteSchedule"/>) or a table of readings: line and column are then row and column of
    /// the table.</summary>
    public bool IsOfSchedule { get; }

    /// <summary>The JSON path of the value, as RFC 9535 writes it: <c>$.runs[3].from.output</c>.
    /// A missing member has the path that it should have.
    /// In a schedule the cell: <c>schedule, row 4, column F (length)</c>.</summary>
    public string Path { get; }

    /// <summary>The line, from 1. A missing member has the place of the object that lacks it.</summary>
    public int Line { get; }

    /// <summary>The column in that line, from 1, in UTF-16 code units, as most editors count.</summary>
    public int Column { get; }

    /// <summary>Message: the error in plain words.</summary>
    public string Message { get; }

    /// <summary>Place and message in one line, in the invariant culture; never throws.</summary>
    public override string ToString() => IsOfSchedule
        ? $"{Path}: {Message}"
        : FormattableString.Invariant($"{Path} (line {Line}, column {Column}): {Message}");
}
