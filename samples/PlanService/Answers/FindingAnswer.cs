using CamPower;

namespace PlanService.Answers;

/// <summary>What one rule found about one thing.</summary>
public sealed record FindingAnswer
{
    /// <summary>Identifier of the rule, in words; GET /rules explains it.</summary>
    public required string Rule { get; init; }

    /// <summary>What a person should do: note (know it), caution (think again), failure (correct it before use) or danger (do not energize).</summary>
    public required string Severity { get; init; }

    /// <summary>What sort of thing it is about: device, run, output, box or site.</summary>
    public required string AboutKind { get; init; }

    /// <summary>Name of the thing.</summary>
    public required string About { get; init; }

    /// <summary>What was found, in a sentence.</summary>
    public required string Message { get; init; }

    /// <summary>What to do.</summary>
    public required string Remedy { get; init; }

    /// <summary>The condition in which it was found; absent where it holds in all.</summary>
    public string? Condition { get; init; }

    /// <summary>The value found; absent where nothing is measured.</summary>
    public QuantityAnswer? Measured { get; init; }

    /// <summary>The value allowed; absent where there is none.</summary>
    public QuantityAnswer? Limit { get; init; }

    /// <summary>Where the limit comes from.</summary>
    public required string Source { get; init; }

    internal static FindingAnswer Of(Finding finding) => new()
    {
        Rule = finding.Rule,
        Severity = Word.Of(finding.Severity),
        AboutKind = Word.Of(finding.About.Kind),
        About = finding.About.Name,
        Message = finding.Message,
        Remedy = finding.Remedy,
        Condition = finding.Condition?.Name,
        Measured = QuantityAnswer.Of(finding.Measured),
        Limit = QuantityAnswer.Of(finding.Limit),
        Source = finding.Source.ToString(),
    };
}
