using CamPower;

namespace PlanService.Answers;

/// <summary>A rule that a site is checked against.</summary>
public sealed record RuleAnswer
{
    /// <summary>Identifier in words.</summary>
    public required string Id { get; init; }

    /// <summary>What a person should do about its findings: note, caution, failure or danger.</summary>
    public required string Severity { get; init; }

    /// <summary>What it looks for.</summary>
    public required string Purpose { get; init; }

    /// <summary>What to do about its findings.</summary>
    public required string Remedy { get; init; }

    /// <summary>The limit that the rule itself sets; absent where the site's own data set it.</summary>
    public QuantityAnswer? Limit { get; init; }

    /// <summary>Where its limit comes from.</summary>
    public required string Source { get; init; }

    internal static RuleAnswer Of(Rule rule) => new()
    {
        Id = rule.Id,
        Severity = Word.Of(rule.Severity),
        Purpose = rule.Purpose,
        Remedy = rule.Remedy,
        Limit = QuantityAnswer.Of(rule.Limit),
        Source = rule.Source.ToString(),
    };
}
