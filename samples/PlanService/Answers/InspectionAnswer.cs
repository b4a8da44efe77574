using CamPower;

namespace PlanService.Answers;

/// <summary>Something that no number tells: a person must look at it on site.</summary>
public sealed record InspectionAnswer
{
    /// <summary>Identifier in words.</summary>
    public required string Id { get; init; }

    /// <summary>What to look at and what should be seen.</summary>
    public required string Look { get; init; }

    /// <summary>What happens otherwise.</summary>
    public required string Why { get; init; }

    /// <summary>What to mind while looking.</summary>
    public required string Caution { get; init; }

    /// <summary>Where the demand comes from.</summary>
    public required string Source { get; init; }

    internal static InspectionAnswer Of(Inspection inspection) => new()
    {
        Id = inspection.Id,
        Look = inspection.Look,
        Why = inspection.Why,
        Caution = inspection.Caution,
        Source = inspection.Source.ToString(),
    };
}
