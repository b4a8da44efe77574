using System;
using System.Collections.Generic;
using System.IO;
using CamPower.Reports.Contents;
using CamPower.Reports.Sections;
using CamPower.Reports.Verdicts;
using CamPower.Reports.Writing;

namespace CamPower.Reports;

/// <summary>The differences between two versions of a site, as text, as a page and as JSON.</summary>
/// <remarks>Immutable. The text depends neither on the machine nor on the culture nor on the day.</remarks>
/// <example>
/// <code>
/// var report = new ChangeReport(after.ComparedWith(before, RuleSet.Standard, PriceList.Neutral));
/// File.WriteAllText("changes.html", report.ToHtml());
/// </code>
/// </example>
public sealed class ChangeReport
{
    private readonly Lazy<IReadOnlyList<Section>> _sections;

    /// <summary>Puts a report together.</summary>
    /// <param name="comparison">What differs.</param>
    /// <exception cref="ArgumentNullException"><paramref name="comparison"/> is null.</exception>
    public ChangeReport(SiteComparison comparison)
    {
        Comparison = Given.NotNull(comparison, nameof(comparison));
        _sections = new Lazy<IReadOnlyList<Section>>(() => [.. ChangeSections.Of(comparison)]);
    }

    /// <summary>The differences.</summary>
    public SiteComparison Comparison { get; }

    private string Title => $"Changes at {Comparison.After.Name}";

    /// <summary>The report as Markdown with tables, in the form of GitHub Flavored Markdown.</summary>
    public string ToMarkdown() => MarkdownWriter.Write(Title, _sections.Value);

    /// <summary>The report as one HTML page: no script, nothing from outside.</summary>
    public string ToHtml() => HtmlWriter.Write(Title, _sections.Value);

    /// <summary>Writes what differs as JSON.</summary>
    /// <param name="utf8">Where to; UTF-8 without a mark is written to it, and it stays open.</param>
    /// <remarks>docs/json.md explains each member.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="utf8"/> is null.</exception>
    public void WriteJson(Stream utf8) => VerdictWriter.Write(Comparison, Given.NotNull(utf8, nameof(utf8)));

    /// <summary>The title; never throws.</summary>
    public override string ToString() => Title;
}
