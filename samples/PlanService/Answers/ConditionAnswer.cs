using CamPower;

namespace PlanService.Answers;

/// <summary>A condition that the site must survive.</summary>
public sealed record ConditionAnswer
{
    /// <summary>Name of the condition.</summary>
    public required string Name { get; init; }

    /// <summary>Temperature of the cables, as text.</summary>
    public required string Cable { get; init; }

    /// <summary>Temperature of the cables. [°C]</summary>
    public required double CableInDegreesCelsius { get; init; }

    /// <summary>Temperature in the boxes, as text.</summary>
    public required string Box { get; init; }

    /// <summary>Temperature in the boxes. [°C]</summary>
    public required double BoxInDegreesCelsius { get; init; }

    internal static ConditionAnswer Of(Condition condition) => new()
    {
        Name = condition.Name,
        Cable = Written.Text(condition.At.Cable),
        CableInDegreesCelsius = condition.At.Cable.DegreesCelsius,
        Box = Written.Text(condition.At.Box),
        BoxInDegreesCelsius = condition.At.Box.DegreesCelsius,
    };
}
