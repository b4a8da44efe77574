using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Threading;
using CamPower.Reports.Contents;
using CamPower.Reports.Sections;
using CamPower.Reports.Verdicts;
using CamPower.Reports.Writing;

namespace CamPower.Reports;

/// <summary>A solved site with its findings, to be read and printed.</summary>
/// <remarks>
/// Immutable. At a glance, findings, what is not stated, the conditions, the boxes with devices, supplies and shorts, video shields,
/// cautions. Names are written as the site has them, escaped where the form asks for it; a character that no page may hold becomes a
/// replacement character. The text depends neither on the machine nor on the culture nor on the day.
/// </remarks>
/// <example>
/// <code>
/// SiteAssessment assessment = site.Assess();
/// var report = new SiteReport(assessment, RuleSet.Standard.Check(assessment));
/// File.WriteAllText("yard.html", report.ToHtml());
/// </code>
/// </example>
public sealed class SiteReport
{
    private readonly Evidence _evidence;
    private readonly Lazy<IReadOnlyList<Section>> _sections;

    /// <summary>Puts a report together.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <param name="findings">What the rules found on it, in any order.</param>
    /// <param name="cancellationToken">Cancels it: trim windows and faults of a large site whose returns are shared take long.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/>, <paramref name="findings"/> or one of them is
    /// null.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    public SiteReport(SiteAssessment assessment, IEnumerable<Finding> findings, CancellationToken cancellationToken = default)
        : this(new Evidence(Given.NotNull(assessment, nameof(assessment)), cancellationToken), findings)
    {
    }

    /// <summary>Puts a report together from what the rules looked at, so that its faults and receptacles are studied once for
    /// both.</summary>
    /// <param name="evidence">The solved site and what was studied of it; its token breaks off the report too.</param>
    /// <param name="findings">What the rules found on it, in any order.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evidence"/>, <paramref name="findings"/> or one of them is null.</exception>
    /// <exception cref="OperationCanceledException">The token of <paramref name="evidence"/> was canceled.</exception>
    public SiteReport(Evidence evidence, IEnumerable<Finding> findings)
    {
        _evidence = Given.NotNull(evidence, nameof(evidence));
        Findings = Given.Items(findings, nameof(findings));
        _sections = new Lazy<IReadOnlyList<Section>>(() => [.. Sections()]);
    }

    /// <summary>The solved site.</summary>
    public SiteAssessment Assessment => _evidence.Assessment;

    /// <summary>The findings on the site.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Author, as printed at the head of the report; null where none is named.</summary>
    public string? Author { get; init; }

    /// <summary>Its date, as printed at its head; null where none is given.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Its revision, as printed at its head, such as "B"; null where none is given.</summary>
    public string? Revision { get; init; }

    /// <summary>Whether every output has a picture of the volts along its runs, and not only one with a device whose voltage is
    /// wrong.</summary>
    public bool HasEveryProfile { get; init; }

    /// <summary>The changes that remove each finding, as <see cref="SiteQuestions.FindRemedies"/> tried them; empty where it was not
    /// asked.</summary>
    public IReadOnlyList<FindingRemedies> Remedies { get; init; } = [];

    /// <summary>The cheapest changes after which no Danger and no Failure is left, as <see cref="SiteQuestions.CheapestRepair"/> found
    /// them; null where it was not asked.</summary>
    public SiteRepair? Repair { get; init; }

    /// <summary>The bill of materials with its pull list; null where it was not asked.</summary>
    public MaterialList? Material { get; init; }

    /// <summary>Headline: "Do not energize.", else whether to correct something before use, and "Not shown to be safe: 3 items
    /// not stated." or "No danger found in what was checked."</summary>
    /// <remarks>Whether it may be energized is for the local code and for who works on it.</remarks>
    public string Headline => Verdicts.Headline.Of(Findings, NotStated.Count);

    /// <summary>How many devices are up, start and get a voltage that they accept, in every condition; of how many it is not
    /// known.</summary>
    public string DeviceSummary => Verdicts.Headline.Devices(Assessment);

    /// <summary>Number of findings of each severity, worst first.</summary>
    public string FindingSummary => Verdicts.Headline.Counts(Findings);

    /// <summary>What is not stated, so that a verdict is not known; of each, the boxes, outputs or models that it is not stated
    /// of.</summary>
    public ILookup<string, string> NotStated => _evidence.NotStated;

    private string Title => $"Camera power at {Assessment.Site.Name}";

    /// <summary>The report as Markdown with tables, in the form of GitHub Flavored Markdown; it has no pictures.</summary>
    public string ToMarkdown() => MarkdownWriter.Write(Title, _sections.Value);

    /// <summary>The report as one HTML page, pictures included: no script, nothing from outside, well-formed as XML too; it prints on A4
    /// and on Letter.</summary>
    public string ToHtml() => HtmlWriter.Write(Title, _sections.Value);

    /// <summary>Writes the headline, the findings, every verdict with the numbers that were compared, and what is not stated, as
    /// JSON.</summary>
    /// <param name="utf8">Where to; UTF-8 without a mark is written to it, and it stays open.</param>
    /// <remarks>docs/json.md explains each member. A quantity has the same unit in every answer.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="utf8"/> is null.</exception>
    /// <example>
    /// <code>
    /// using FileStream file = File.Create("yard.verdicts.json");
    /// report.WriteJson(file);
    /// </code>
    /// </example>
    public void WriteJson(Stream utf8) => VerdictWriter.Write(this, _evidence, Given.NotNull(utf8, nameof(utf8)));

    /// <summary>The title; never throws.</summary>
    public override string ToString() => Title;

    private IEnumerable<Section> Sections()
    {
        yield return SummarySection.Of(this);
        yield return FindingsSection.Of(Findings);
        if (Remedies.Count > 0 || Repair is not null) yield return RemediesSection.Of(Remedies, Repair);
        if (NotStated.Count > 0) yield return NotStatedSection.Of(this);
        yield return ConditionsSection.Of(Assessment.Site);
        foreach (Section boxes in new BoxSection(_evidence, Findings, HasEveryProfile).All()) yield return boxes;
        foreach (Section mains in MainsSection.Of(_evidence)) yield return mains;
        if (Material is MaterialList material) yield return MaterialSection.Of(material);
        if (Assessment.Shields.Count > 0) yield return ShieldsSection.Of(Assessment.Shields);
        yield return CautionsSection.Of();
    }
}
