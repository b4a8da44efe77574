using System;
using System.IO;
using CamPower.Commissioning;
using CamPower.Reports.Verdicts;
using CamPower.Reports.Writing;

namespace CamPower.Reports;

/// <summary>What is most probably wrong and what to read next, in plain sentences or for programs.</summary>
/// <remarks>Immutable. The text depends neither on the machine nor on the culture nor on the day. It advises low-voltage readings
/// only.</remarks>
/// <example>
/// <code>
/// var report = new DiagnosisReport(record, sheet.Diagnose(record.Readings, [Symptom.Dark("gate plate")]));
/// Console.WriteLine(report.ToText());
/// </code>
/// </example>
public sealed class DiagnosisReport
{
    /// <summary>Puts it together.</summary>
    /// <param name="record">The readings beside what was expected.</param>
    /// <param name="diagnosis">What they say, of the same sheet.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public DiagnosisReport(CommissioningRecord record, Diagnosis diagnosis)
    {
        Record = Given.NotNull(record, nameof(record));
        Diagnosis = Given.NotNull(diagnosis, nameof(diagnosis));
    }

    /// <summary>The readings beside what was expected.</summary>
    public CommissioningRecord Record { get; }

    /// <summary>What they say.</summary>
    public Diagnosis Diagnosis { get; }

    /// <summary>Plain sentences, one a line, set in by two blanks under what they belong to; lines ended by LF.</summary>
    public string ToText() => DiagnosisText.Of(this);

    /// <summary>Writes it as JSON.</summary>
    /// <param name="utf8">Where to; UTF-8 without a mark is written to it, and it stays open.</param>
    /// <remarks>docs/json.md explains each member.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="utf8"/> is null.</exception>
    public void WriteJson(Stream utf8) => VerdictWriter.Write(this, Given.NotNull(utf8, nameof(utf8)));

    /// <summary>The likeliest group; never throws.</summary>
    public override string ToString() => Diagnosis.ToString();
}
