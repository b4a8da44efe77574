using System;
using CamPower.Circuits;

namespace CamPower;

/// <summary>Largest or smallest value that a run allows, and its limit; or that there is none.</summary>
/// <typeparam name="T">What was asked for: a length, an area, a size, a power, a voltage or a temperature.</typeparam>
/// <remarks>
/// Immutable. The value holds: fed forward it meets every accepted limit (<see cref="AtLimit"/>), and a hair further
/// would not. It lies inside the limit by some 1e-13 of itself, so that it also holds when it is read in another unit
/// and handed back. "No value" is an answer too: <see cref="HasValue"/> is false, <see cref="LimitedBy"/> says what
/// the limit is, and reading the value throws.
/// </remarks>
/// <example>
/// <code>
/// RunAnswer&lt;Length&gt; longest = run.LongestLength(camera, from, accepted, conductorAt);
/// Console.WriteLine(longest.TryGetValue(out Length length) ? $"{length}, limited by {longest.LimitedBy}" : "none");
/// </code>
/// </example>
public sealed class RunAnswer<T> where T : struct
{
    private readonly T? _value;
    private readonly Func<RunAnswer<T>, Derivation> _explain;

    internal RunAnswer(T? value, BindingLimit limitedBy, RunResult atLimit, Func<RunAnswer<T>, Derivation> explain)
    {
        _value = value;
        LimitedBy = limitedBy;
        AtLimit = atLimit;
        _explain = explain;
    }

    /// <summary>Whether any value will do.</summary>
    public bool HasValue => _value.HasValue;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">No value will do.</exception>
    public T Value => _value ?? throw new InvalidOperationException(
        $"No value will do: {RunLimitText.Of(LimitedBy)} is the limit. Ask TryGetValue first.");

    /// <summary>What keeps the value from going further, or, where there is none, what the limit is.</summary>
    public BindingLimit LimitedBy { get; }

    /// <summary>The run solved forward with the value; the default value, "no result", where there is none.</summary>
    public RunResult AtLimit { get; }

    /// <summary>Gets the value; returns false where there is none.</summary>
    /// <param name="value">The value, or the default value.</param>
    public bool TryGetValue(out T value)
    {
        value = _value.GetValueOrDefault();
        return HasValue;
    }

    /// <summary>How the answer was worked out, step by step.</summary>
    public Derivation Explain() => _explain(this);

    /// <summary>The value and its limit in the invariant culture; never throws.</summary>
    public override string ToString() => _value is T value
        ? $"{RunLimitText.Of(value)}, limited by {RunLimitText.Of(LimitedBy)}"
        : $"none: {RunLimitText.Of(LimitedBy)} is the limit";
}
