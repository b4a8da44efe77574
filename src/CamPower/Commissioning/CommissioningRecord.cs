using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Commissioning;

/// <summary>A sheet with what was read: accepted when every line was read and is inside its band.</summary>
/// <remarks>Immutable. Of several readings of one point the last counts; those before it are kept in <see cref="Readings"/>.</remarks>
/// <example>
/// <code>
/// var record = new CommissioningRecord(sheet, readings, by: "A. Tern", on: "2026-03-09");
/// foreach (JudgedReading line in record.Lines.Where(l => l.Verdict != ReadingVerdict.Inside)) Console.WriteLine(line);
/// </code>
/// </example>
public sealed class CommissioningRecord
{
    /// <summary>Judges readings against a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="readings">The readings in the order in which they were taken. Points that are not on the sheet come after its
    /// lines.</param>
    /// <param name="by">Who read them; null where that is not stated.</param>
    /// <param name="on">When, as it was written down; null where that is not stated.</param>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/>, <paramref name="readings"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">The site has no place for a reading.</exception>
    public CommissioningRecord(CommissioningSheet sheet, IEnumerable<MeterReading> readings, string? by = null, string? on = null)
    {
        Sheet = Require.NotNull(sheet, nameof(sheet));
        Readings = Require.Items(readings, nameof(readings));
        By = by;
        On = on;
        var last = new Dictionary<ReadingPoint, MeterReading>();
        foreach (MeterReading reading in Readings) last[reading.Point] = reading;
        var lines = sheet.Lines.Select(l => new JudgedReading(l, last.TryGetValue(l.Point, out MeterReading? read) ? read : null)).ToList();
        foreach (ReadingPoint other in Readings.Select(r => r.Point).Distinct().Except(sheet.Lines.Select(l => l.Point)))
        {
            lines.Add(new JudgedReading(sheet.Expect(other), last[other]));
        }

        Lines = lines.AsReadOnly();
    }

    /// <summary>The sheet.</summary>
    public CommissioningSheet Sheet { get; }

    /// <summary>The readings, in the order in which they were taken.</summary>
    public IReadOnlyList<MeterReading> Readings { get; }

    /// <summary>Who read them, or null where that is not stated.</summary>
    public string? By { get; }

    /// <summary>When, as it was written down, or null where that is not stated.</summary>
    public string? On { get; }

    /// <summary>The lines of the sheet, and then what else was read.</summary>
    public IReadOnlyList<JudgedReading> Lines { get; }

    /// <summary>Whether every line was read and is inside its band.</summary>
    public bool IsAccepted => Lines.All(l => l.Verdict == ReadingVerdict.Inside);

    /// <summary>How many lines have a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    public int Count(ReadingVerdict verdict) => Lines.Count(l => l.Verdict == verdict);

    /// <summary>The counts in words; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Sheet.Site}: {Count(ReadingVerdict.Inside)} inside, {Count(ReadingVerdict.Outside)} outside, ")
        + FormattableString.Invariant($"{Count(ReadingVerdict.Impossible)} impossible, {Count(ReadingVerdict.NotRead)} not read");
}
