using System.Collections.Generic;
using System.Linq;
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

    /// <summary>Name of its protective device; absent where it is not stated.</summary>
    public string? Protection { get; init; }

    /// <summary>Its protective device in each condition, in the order of the file.</summary>
    public required IReadOnlyList<ProtectionAnswer> ProtectionInConditions { get; init; }

    /// <summary>A short at each place of what it feeds: the terminals first, then each joint and end.</summary>
    public required IReadOnlyList<ShortAnswer> Shorts { get; init; }

    /// <summary>What numbers say of the power-limit class that it claims; absent where it claims none.</summary>
    public PowerLimitAnswer? PowerLimit { get; init; }

    internal static OutputAnswer Of(OutputFaults faults)
    {
        OutputAssessment output = faults.Assessment;
        return new OutputAnswer
        {
            Number = output.Output.Number,
            WorstCondition = output.Worst.Condition.Name,
            Current = Written.Text(output.Worst.Current),
            CurrentInAmperes = output.Worst.Current.Amperes,
            Limit = Written.Text(output.Output.Limit),
            LimitInAmperes = output.Output.Limit.Amperes,
            Protection = output.Output.Protection?.Name,
            ProtectionInConditions = [.. faults.InConditions.Select(ProtectionAnswer.Of)],
            Shorts = [.. faults.Shorts.Select(ShortAnswer.Of)],
            PowerLimit = PowerLimitAnswer.Of(output),
        };
    }
}
