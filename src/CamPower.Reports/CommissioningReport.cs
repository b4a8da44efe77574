using System;
using System.Collections.Generic;
using CamPower.Commissioning;
using CamPower.Reports.Contents;
using CamPower.Reports.Sections;
using CamPower.Reports.Writing;

namespace CamPower.Reports;

/// <summary>A commissioning record on paper: without readings the sheet to be filled in, with them the record to be signed.</summary>
/// <remarks>Immutable. The text depends neither on the machine nor on the culture nor on the day.</remarks>
/// <example>
/// <code>
/// var blank = new CommissioningRecord(sheet, []);
/// File.WriteAllText("sheet.html", new CommissioningReport(blank).ToHtml());
/// </code>
/// </example>
public sealed class CommissioningReport
{
    private readonly IReadOnlyList<Section> _sections;

    /// <summary>Puts it together.</summary>
    /// <param name="record">The record.</param>
    /// <exception cref="ArgumentNullException"><paramref name="record"/> is null.</exception>
    public CommissioningReport(CommissioningRecord record)
    {
        Record = Given.NotNull(record, nameof(record));
        _sections = [.. CommissioningSections.Of(record)];
    }

    /// <summary>The record.</summary>
    public CommissioningRecord Record { get; }

    private string Title => Record.Readings.Count == 0
        ? $"Commissioning sheet of {Record.Sheet.Site.Name}"
        : $"Commissioning record of {Record.Sheet.Site.Name}";

    /// <summary>As Markdown with tables, in the form of GitHub Flavored Markdown.</summary>
    public string ToMarkdown() => MarkdownWriter.Write(Title, _sections);

    /// <summary>As one HTML page: no script, nothing from outside, well-formed as XML too; it prints on A4 and on Letter.</summary>
    public string ToHtml() => HtmlWriter.Write(Title, _sections);

    /// <summary>The title; never throws.</summary>
    public override string ToString() => Title;
}
