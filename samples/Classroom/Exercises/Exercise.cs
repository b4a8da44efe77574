using System;
using System.Globalization;
using CamPower;

namespace Classroom.Exercises;

/// <summary>A question with the library's answer to it.</summary>
public sealed class Exercise
{
    private readonly Func<Derivation> _explain;

    internal Exercise(string question, string unit, double answer, double relativeTolerance, Func<Derivation> explain)
    {
        Question = question;
        Unit = unit;
        Answer = answer;
        RelativeTolerance = relativeTolerance;
        _explain = explain;
    }

    public string Question { get; }

    /// <summary>The unit of the answer; empty for a plain number.</summary>
    public string Unit { get; }

    /// <summary>The library's answer, in <see cref="Unit"/>.</summary>
    public double Answer { get; }

    /// <summary>How far off a right answer may be, as a share of it; 0 where it must be the very number.</summary>
    public double RelativeTolerance { get; }

    public string ToleranceText => RelativeTolerance > 0
        ? FormattableString.Invariant($"An answer within {RelativeTolerance * 100:0.#} % counts as right.")
        : "Only the exact number counts as right.";

    public string AnswerText => FormattableString.Invariant($"{Answer:G5} {Unit}").TrimEnd();

    /// <summary>How the library works the answer out.</summary>
    public Derivation Explain() => _explain();

    /// <summary>Marks an answer as it was typed.</summary>
    public Mark MarkOf(string typed)
    {
        if (!double.TryParse(typed, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) || !double.IsFinite(value)) return Mark.NotANumber;
        return Math.Abs(value - Answer) <= RelativeTolerance * Math.Abs(Answer) ? Mark.Right : Mark.Wrong;
    }
}
