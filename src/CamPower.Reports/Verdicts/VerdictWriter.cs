using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Encodings.Web;
using System.Text.Json;
using UnitsNet;

namespace CamPower.Reports.Verdicts;

/// <summary>Writes what was found and judged as JSON, as docs/json.md describes it.</summary>
internal sealed partial class VerdictWriter
{
    // Degrees and ohms are written as such. The same bytes on every machine.
    private static readonly JsonWriterOptions Options =
        new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly Severity[] WorstFirst = [Severity.Danger, Severity.Failure, Severity.Caution, Severity.Note];

    private readonly Utf8JsonWriter _json;

    private VerdictWriter(Utf8JsonWriter json) => _json = json;

    internal static void Write(SiteReport report, Evidence evidence, Stream utf8)
    {
        using var json = new Utf8JsonWriter(utf8, Options);
        new VerdictWriter(json).Write(report, evidence);
    }

    internal static void Write(SiteComparison comparison, Stream utf8)
    {
        using var json = new Utf8JsonWriter(utf8, Options);
        new VerdictWriter(json).Write(comparison);
    }

    private void Write(SiteComparison comparison)
    {
        _json.WriteStartObject();
        _json.WriteString("before", PlainText.Of(comparison.Before.Name));
        _json.WriteString("after", PlainText.Of(comparison.After.Name));
        WriteTexts("added", comparison.Added);
        WriteTexts("removed", comparison.Removed);
        WriteTexts("changed", comparison.Changed);
        WriteAll("gained", comparison.Gained, finding => Write(finding, []));
        WriteAll("lost", comparison.Lost, finding => Write(finding, []));
        WriteAll("margins", comparison.Margins, Write);
        WriteAll("material", comparison.Material, Write);
        _json.WriteNumber("cost", comparison.Cost);
        _json.WriteEndObject();
    }

    private void Write(MovedMargin margin)
    {
        _json.WriteStartObject();
        WriteSubject("subject", margin.About);
        _json.WriteString("what", margin.What);
        WriteQuantity("before", margin.Before);
        WriteQuantity("after", margin.After);
        WriteQuantity("change", margin.Change);
        _json.WriteEndObject();
    }

    private void Write(MaterialLine line)
    {
        _json.WriteStartObject();
        _json.WriteString("kind", line.Kind);
        _json.WriteString("item", PlainText.Of(line.Item));
        _json.WriteNumber("quantity", line.Quantity);
        _json.WriteString("unit", line.Unit);
        _json.WriteNumber("cost", line.Cost);
        _json.WriteEndObject();
    }

    private void WriteTexts(string name, IEnumerable<string> texts) =>
        WriteAll(name, texts, text => _json.WriteStringValue(PlainText.Of(text)));

    private void WriteAll<T>(string name, IEnumerable<T> items, Action<T> write)
    {
        _json.WriteStartArray(name);
        foreach (T item in items) write(item);
        _json.WriteEndArray();
    }

    private void Write(SiteReport report, Evidence evidence)
    {
        _json.WriteStartObject();
        _json.WriteString("site", PlainText.Of(report.Assessment.Site.Name));
        _json.WriteString("headline", report.Headline);
        WriteCounts(report);
        _json.WriteStartArray("findings");
        foreach (Finding finding in report.Findings) Write(finding, report.Remedies);
        _json.WriteEndArray();
        if (report.Repair is SiteRepair repair) Write(repair);
        _json.WriteStartArray("verdicts");
        foreach (VerdictLine line in VerdictLines.Of(evidence)) Write(line);
        _json.WriteEndArray();
        WriteAlternating(report.Assessment);
        _json.WriteStartArray("notStated");
        foreach (IGrouping<string, string> what in report.NotStated) WriteNotStated(what);
        _json.WriteEndArray();
        _json.WriteEndObject();
    }

    private void WriteCounts(SiteReport report)
    {
        _json.WriteStartObject("counts");
        foreach (Severity severity in WorstFirst) _json.WriteNumber(Word(severity), report.Findings.Count(f => f.Severity == severity));
        IReadOnlyList<DeviceAssessment> devices = Headline.Counted(report.Assessment);
        _json.WriteNumber("devices", devices.Count);
        _json.WriteNumber("devicesThatWork", devices.Count(d => d.Verdict == Verdict.Holds));
        _json.WriteNumber("notStated", report.NotStated.Count);
        _json.WriteEndObject();
    }

    private void Write(Finding finding, IReadOnlyList<FindingRemedies> remedies)
    {
        _json.WriteStartObject();
        _json.WriteString("rule", finding.Rule);
        _json.WriteString("severity", Word(finding.Severity));
        WriteSubject("subject", finding.About);
        WriteCondition(finding.Condition);
        WriteQuantity("measured", finding.Measured);
        WriteQuantity("limit", finding.Limit);
        _json.WriteString("message", PlainText.Of(finding.Message));
        _json.WriteString("remedy", finding.Remedy);
        _json.WriteString("source", finding.Source.ToString());
        if (remedies.FirstOrDefault(found => IsOf(found.Finding, finding)) is FindingRemedies tried) Write(tried);
        _json.WriteEndObject();
    }

    // The remedies were sought on a check of their own.
    private static bool IsOf(Finding one, Finding other) => one.About.Kind == other.About.Kind
        && (one.Rule, one.About.Name, one.Message) == (other.Rule, other.About.Name, other.Message);

    private void Write(FindingRemedies tried)
    {
        _json.WriteStartArray("remedies");
        foreach (Remedy remedy in tried.Remedies)
        {
            _json.WriteStartObject();
            WriteChanges(remedy.Changes, remedy.Cost, remedy.Unit);
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
    }

    private void Write(SiteRepair repair)
    {
        _json.WriteStartObject("repair");
        WriteChanges(repair.Changes, repair.Cost, repair.Unit);
        _json.WriteBoolean("complete", repair.IsComplete);
        _json.WriteNumber("left", repair.Left.Count);
        _json.WriteEndObject();
    }

    private void WriteChanges(IEnumerable<SiteChange> changes, double cost, string unit)
    {
        WriteTexts("changes", changes.Select(change => change.Text));
        _json.WriteNumber("cost", cost);
        _json.WriteString("unit", PlainText.Of(unit));
    }

    private void Write(VerdictLine line)
    {
        _json.WriteStartObject();
        _json.WriteString("what", line.What);
        WriteSubject("where", line.Where);
        WriteCondition(line.Condition);
        _json.WriteString("verdict", Word(line.Verdict));
        WriteQuantity("value", line.Value);
        WriteQuantity("limit", line.Limit);
        WriteQuantity("policyLimit", line.PolicyLimit);
        if (line.NotStated is string missing) _json.WriteString("notStated", missing);
        _json.WriteEndObject();
    }

    // Left out where no device is on alternating current.
    private void WriteAlternating(SiteAssessment assessment)
    {
        var solved = assessment.Devices.SelectMany(device => device.InConditions, (device, at) => (device.Device, at.Condition, at.Ac))
            .Where(x => x.Ac is { HasSteadyState: true }).ToList();
        if (solved.Count > 0) WriteAll("alternating", solved, x => Write(x.Device, x.Condition, x.Ac!));
    }

    private void Write(SiteDevice device, Condition condition, AcInCondition ac)
    {
        _json.WriteStartObject();
        WriteSubject("where", Subject.Of(device));
        WriteCondition(condition);
        WriteQuantity("rmsVoltage", ac.RmsVoltage);
        WriteQuantity("crest", ac.Crest);
        WriteQuantity("valley", ac.Valley);
        WriteQuantity("rmsCurrent", ac.Current);
        WriteQuantity("peakCurrent", ac.PeakCurrent);
        WriteQuantity("apparentPower", ac.ApparentPower);
        WriteQuantity("power", ac.Power);
        WriteQuantity("powerFactor", ac.PowerFactor);
        if (ac.IsCapacitanceAssumed) _json.WriteBoolean("capacitanceAssumed", value: true);
        _json.WriteEndObject();
    }

    private void WriteNotStated(IGrouping<string, string> what)
    {
        foreach (string where in what)
        {
            _json.WriteStartObject();
            _json.WriteString("what", what.Key);
            _json.WriteString("where", PlainText.Of(where));
            _json.WriteEndObject();
        }
    }

    private void WriteSubject(string name, Subject subject)
    {
        _json.WriteStartObject(name);
        _json.WriteString("kind", Word(subject.Kind));
        _json.WriteString("name", PlainText.Of(subject.Name));
        _json.WriteEndObject();
    }

    private void WriteCondition(Condition? condition)
    {
        if (condition is not null) _json.WriteString("condition", PlainText.Of(condition.Name));
    }

    // JSON has no infinity: a value without a bound is left out.
    private void WriteQuantity(string name, IQuantity? quantity)
    {
        if (quantity is null) return;
        UnitNumber number = UnitNumber.Of(quantity);
        if (!double.IsFinite(number.Number)) return;
        _json.WriteStartObject(name);
        _json.WriteNumber("number", number.Number);
        _json.WriteString("unit", number.Unit);
        _json.WriteEndObject();
    }

    private static string Word<T>(T member)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(member.ToString());
}
