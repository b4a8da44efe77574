using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace PlanService.Load;

/// <summary>What the clients of one storm were answered.</summary>
public sealed class Tally
{
    private readonly ConcurrentQueue<(string Answer, TimeSpan Time)> _answers = new();

    /// <summary>How many of each answer: "200 whole", "503 refused", "200 without a body".</summary>
    public IReadOnlyDictionary<string, int> Counts => _answers.GroupBy(a => a.Answer).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);

    /// <summary>The longest time from the first byte sent to the last byte received; nothing where nobody asked.</summary>
    public TimeSpan Slowest => _answers.IsEmpty ? TimeSpan.Zero : _answers.Max(a => a.Time);

    /// <summary>The time that half of the clients did not need.</summary>
    public TimeSpan Median => _answers.IsEmpty ? TimeSpan.Zero : _answers.Select(a => a.Time).Order().ElementAt(_answers.Count / 2);

    /// <summary>Notes one answer.</summary>
    public void Add(string answer, TimeSpan time) => _answers.Enqueue((answer, time));

    /// <summary>The counts and the times on one line; never throws.</summary>
    public override string ToString() =>
        string.Join(", ", Counts.OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => Invariant($"{c.Value} × {c.Key}")))
        + Invariant($"; median {Median.TotalSeconds:0.000} s, slowest {Slowest.TotalSeconds:0.000} s");
}
