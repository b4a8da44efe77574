using System;
using System.Collections.Generic;
using System.Text;
using CamPower.Commissioning;
using CamPower.Files.Formats;
using CamPower.Files.Readings;

namespace CamPower.Files;

/// <summary>Reads and writes what a meter showed on a site: as a table (CSV), or as a record (JSON).</summary>
/// <remarks>
/// A table has the columns what, where, state and value, and may have meter, time and remark; others are passed over, and so are rows
/// without a value. A record has the temperatures and who read it, too. Stateless; every member may be called from many threads at once, in
/// any culture.
/// </remarks>
/// <example>
/// <code>
/// ReadingsFileResult read = ReadingsFile.Read(File.ReadAllText("readings.csv"), site);
/// foreach (SiteFileError error in read.Errors) Console.WriteLine(error);
/// </code>
/// </example>
public static class ReadingsFile
{
    /// <summary>Reads a file of readings, within the limits of <see cref="SiteFileOptions.Default"/>.</summary>
    /// <param name="text">The text: JSON where it begins with a brace, otherwise a table separated by commas, semicolons or tabs.</param>
    /// <param name="site">The site that the readings are of.</param>
    /// <returns>The readings, or every error of the file. What it holds never throws.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static ReadingsFileResult Read(string text, Site site)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(site);
        SiteFileOptions options = SiteFileOptions.Default;
        string content = text.TrimStart('\uFEFF');
        var file = new SiteReading(new SourceText(Encoding.UTF8.GetBytes(content)), options.MaxDepth);
        if (content.Length > options.MaxBytes)
        {
            file.Add(FormattableString.Invariant($"the file is too large: more than {options.MaxBytes} bytes are not read"), 0);
            return new ReadingsFileResult(null, [], file.Errors());
        }

        Place? root = content.TrimStart().StartsWith('{') ? JsonTree.Read(file) : ReadingTable.Read(content, file);
        (RawRecord? record, IReadOnlyList<MeterReading> readings) = root is null ? (null, []) : ReadingFormat.Read(root, site);
        return new ReadingsFileResult(record, readings, file.Errors());
    }

    /// <summary>Writes a record as JSON, indented, lines ended by LF. Reading it gives back the readings, the temperatures, and who
    /// read them; the tolerances and the meter of the sheet are not in it.</summary>
    /// <param name="record">The record.</param>
    /// <exception cref="ArgumentNullException"><paramref name="record"/> is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, no valid Unicode, or holds a control or direction character.</exception>
    public static string Write(CommissioningRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return ReadingFormat.Text(record);
    }

    /// <summary>Writes a record as a table, as RFC 4180 has it: a row for each danger of the plan and
    /// each line of the sheet, with what is expected and what to do. Of
    /// a record without readings it is the sheet, to be filled in and read back.</summary>
    /// <param name="record">The record.</param>
    /// <exception cref="ArgumentNullException"><paramref name="record"/> is null.</exception>
    public static string WriteTable(CommissioningRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return ReadingTable.Text(record);
    }
}
