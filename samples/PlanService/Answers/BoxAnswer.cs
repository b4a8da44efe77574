using System.Collections.Generic;
using System.Linq;
using CamPower;

namespace PlanService.Answers;

/// <summary>One box or adapter in the condition that leaves the least of its rating.</summary>
public sealed record BoxAnswer
{
    /// <summary>Name of the box.</summary>
    public required string Name { get; init; }

    /// <summary>The condition that leaves the least of its rating.</summary>
    public required string WorstCondition { get; init; }

    /// <summary>Current of all outputs then, as text.</summary>
    public required string TotalCurrent { get; init; }

    /// <summary>Current of all outputs then. [A]</summary>
    public required double TotalCurrentInAmperes { get; init; }

    /// <summary>What the supply may deliver then, derated by the temperature in the box, as text.</summary>
    public required string DeratedRating { get; init; }

    /// <summary>What the supply may deliver then. [A]</summary>
    public required double DeratedRatingInAmperes { get; init; }

    /// <summary>Whether some output asks for more than its cables can carry: its part is then what its loads ask for.</summary>
    public required bool IsDemandOnly { get; init; }

    /// <summary>The box in each condition, in the order of the file.</summary>
    public required IReadOnlyList<BoxConditionAnswer> InConditions { get; init; }

    /// <summary>The used outputs.</summary>
    public required IReadOnlyList<OutputAnswer> Outputs { get; init; }

    internal static BoxAnswer Of(BoxAssessment box, IReadOnlyList<OutputFaults> faults) => new()
    {
        Name = box.Box.Name,
        WorstCondition = box.Worst.Condition.Name,
        TotalCurrent = Written.Text(box.Worst.TotalCurrent),
        TotalCurrentInAmperes = box.Worst.TotalCurrent.Amperes,
        DeratedRating = Written.Text(box.Worst.DeratedRating),
        DeratedRatingInAmperes = box.Worst.DeratedRating.Amperes,
        IsDemandOnly = box.Worst.IsDemandOnly,
        InConditions = [.. box.InConditions.Select(BoxConditionAnswer.Of)],
        Outputs = [.. faults.Where(o => o.Box == box.Box).Select(OutputAnswer.Of)],
    };
}
