using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Commissioning;

/// <summary>What is most probably wrong with a site, and what to read next.</summary>
/// <remarks>
/// Immutable; the same readings always give the same answer. Each cause is the circuit of the site with that fault in it: what every point
/// would read, with the size of the fault, the tolerances and the meter integrated out. A probability is as good as the priors and the
/// model: the page on diagnosis shows how often it is right on made-up sites.
/// <para>It advises low-voltage readings only. Local codes and licensed practice come first.</para>
/// </remarks>
/// <example>
/// <code>
/// Diagnosis found = sheet.Diagnose(readings, [Symptom.Dark("gate plate")]);
/// foreach (CauseGroup group in found.Groups.Take(3)) Console.WriteLine(group);
/// Console.WriteLine(found.Advice);
/// </code>
/// </example>
public sealed class Diagnosis
{
    internal Diagnosis(IReadOnlyList<CauseGroup> groups, NextReading? next, bool isSettled, bool mustIsolate,
        IReadOnlyList<MeterReading> unused,
        IReadOnlyList<(GroupKey Key, double Share)> ofFullSheet)
    {
        Groups = groups;
        Next = next;
        IsSettled = isSettled;
        MustIsolateFirst = mustIsolate;
        Unused = unused;
        OfFullSheet = ofFullSheet;
    }

    /// <summary>What may be wrong, the likeliest first; also that nothing is.</summary>
    public IReadOnlyList<CauseGroup> Groups { get; }

    /// <summary>The next reading; null where it is settled, and where no reading separates the rest.</summary>
    public NextReading? Next { get; }

    /// <summary>Whether one group has 95 % and no other that is a danger more than 1 %.</summary>
    public bool IsSettled { get; }

    /// <summary>Whether a cause that is a danger is more than 1 % likely: isolate before anything else.</summary>
    public bool MustIsolateFirst { get; }

    /// <summary>Readings that the diagnosis has no use for: at a junction without a device, or impossible by any wiring.</summary>
    public IReadOnlyList<MeterReading> Unused { get; }

    /// <summary>What to do now, in words.</summary>
    public string Advice
    {
        get
        {
            string step = IsSettled ? Groups[0].ToDo
                : Next is null ? CauseWords.NoReadingLeft
                : $"{CauseWords.NotSettled} {Next.Point}. {Next.Safety}";
            return MustIsolateFirst ? $"{CauseWords.Danger} {step}" : step;
        }
    }

    /// <summary>The likeliest group and the next reading, in the invariant culture; never throws.</summary>
    public override string ToString() =>
        Next is null ? Groups[0].ToString() : FormattableString.Invariant($"{Groups[0]}; next: {Next.Point}");

    /// <summary>The groups that the whole sheet can tell apart, by key: what the stop is judged by.</summary>
    internal IReadOnlyList<(GroupKey Key, double Share)> OfFullSheet { get; }
}
