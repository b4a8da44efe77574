using System;
using System.Collections.Generic;
using System.IO;
using System.Text.Json;
using CamPower.Commissioning;
using CamPower.Reports.Writing;

namespace CamPower.Reports.Verdicts;

/// <content>What is most probably wrong, for programs.</content>
internal sealed partial class VerdictWriter
{
    private static readonly ReadingVerdict[] ReadingVerdicts =
        [ReadingVerdict.Inside, ReadingVerdict.Outside, ReadingVerdict.Impossible, ReadingVerdict.NotRead];

    internal static void Write(DiagnosisReport report, Stream utf8)
    {
        using var json = new Utf8JsonWriter(utf8, Options);
        new VerdictWriter(json).Write(report);
    }

    private void Write(DiagnosisReport report)
    {
        Diagnosis diagnosis = report.Diagnosis;
        _json.WriteStartObject();
        _json.WriteString("site", PlainText.Of(report.Record.Sheet.Site.Name));
        _json.WriteStartObject("readings");
        foreach (ReadingVerdict verdict in ReadingVerdicts) _json.WriteNumber(Word(verdict), report.Record.Count(verdict));
        _json.WriteEndObject();
        _json.WriteBoolean("settled", diagnosis.IsSettled);
        _json.WriteBoolean("isolateFirst", diagnosis.MustIsolateFirst);
        _json.WriteString("advice", PlainText.Of(diagnosis.Advice));
        WriteAll("groups", diagnosis.Groups, Write);
        if (diagnosis.Next is NextReading next) Write(next, diagnosis.Groups);
        WriteAll("unused", diagnosis.Unused, reading => WritePoint(null, reading.Point));
        _json.WriteEndObject();
    }

    private void Write(CauseGroup group)
    {
        _json.WriteStartObject();
        WriteGroup(group);
        WriteQuantity("probability", group.Probability);
        _json.WriteBoolean("danger", group.IsDanger);
        WriteAll("for", DiagnosisText.Speaking(group, isFor: true), Write);
        WriteAll("against", DiagnosisText.Speaking(group, isFor: false), Write);
        _json.WriteString("toDo", group.ToDo);
        _json.WriteString("safety", group.Safety);
        if (group.Separates.Length > 0) _json.WriteString("separates", group.Separates);
        _json.WriteEndObject();
    }

    private void WriteGroup(CauseGroup group)
    {
        WriteAll("causes", group.Causes, cause => _json.WriteStringValue(Word(cause)));
        if (group.Place.Length > 0) _json.WriteString("where", PlainText.Of(group.Place));
    }

    private void Write(ReadingPrediction said)
    {
        _json.WriteStartObject();
        WritePoint("reading", said.Reading.Point);
        WriteQuantity("read", said.Reading.Value);
        WriteQuantity("predicted", said.Predicted);
        _json.WriteEndObject();
    }

    private void Write(NextReading next, IReadOnlyList<CauseGroup> groups)
    {
        _json.WriteStartObject("next");
        WritePoint("reading", next.Point);
        _json.WriteNumber("bits", next.ExpectedBits);
        _json.WriteNumber("cost", next.Cost);
        _json.WriteString("toDo", PlainText.Of(next.Step));
        _json.WriteString("safety", PlainText.Of(next.Safety));
        WriteAll("expected", groups, group =>
        {
            _json.WriteStartObject();
            WriteGroup(group);
            WriteQuantity("value", group.Predict(next.Point));
            _json.WriteEndObject();
        });
        _json.WriteEndObject();
    }

    private void WritePoint(string? name, ReadingPoint point)
    {
        if (name is null) _json.WriteStartObject();
        else _json.WriteStartObject(name);
        _json.WriteString("what", Word(point.Kind));
        _json.WriteString("where", PlainText.Of(point.Where));
        _json.WriteString("state", Word(point.State));
        _json.WriteEndObject();
    }
}
