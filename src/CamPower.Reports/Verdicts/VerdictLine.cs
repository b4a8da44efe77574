using UnitsNet;

namespace CamPower.Reports.Verdicts;

/// <summary>One verdict: what was judged, where and in which condition, and the numbers that were compared.</summary>
internal sealed record VerdictLine(string What, Subject Where, Condition? Condition, Verdict Verdict)
{
    internal IQuantity? Value { get; init; }

    internal IQuantity? Limit { get; init; }

    internal IQuantity? PolicyLimit { get; init; }

    internal string? NotStated { get; init; }

    /// <summary>The line of a judgment; null where nothing was judged.</summary>
    internal static VerdictLine? Of(string what, Subject where, Condition? condition, Judgment judgment) =>
        judgment.Value is null && judgment.NotStated is null
        ? null
        : new VerdictLine(what, where, condition, judgment.Verdict)
        {
            Value = judgment.Value,
            Limit = judgment.Limit,
            PolicyLimit = judgment.PolicyLimit,
            NotStated = judgment.NotStated,
        };
}
