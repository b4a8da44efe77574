using CamPower;

namespace PlanService.Answers;

/// <summary>One used output of a box in the condition with the most current.</summary>
public sealed record OutputAnswer
{
    /// <summary>Number of the output.</summary>
    public required int Number { get; init; }

    /// <summary>The condition with the most current.</summary>
    public required string WorstCondition { get; init; }

    /// <summary>Its current then, as text.</summary>
    public required string Current { get; init; }

    /// <summary>Its current then. [A]</summary>
    public required double CurrentInAmperes { get; init; }

    /// <summary>The most that it may give, as text.</summary>
    public required string Limit { get; init; }

    /// <summary>The most that it may give. [A]</summary>
    public required double LimitInAmperes { get; init; }

    internal static OutputAnswer Of(OutputAssessment output) => new()
    {
        Number = output.Output.Number,
        WorstCondition = output.Worst.Condition.Name,
        Current = Written.Text(output.Worst.Current),
        CurrentInAmperes = output.Worst.Current.Amperes,
        Limit = Written.Text(output.Output.Limit),
        LimitInAmperes = output.Output.Limit.Amperes,
    };
}
