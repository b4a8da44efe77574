using CamPower;

namespace PlanService.Answers;

/// <summary>What numbers say of an output that claims a power-limit class: they refute it or they do not, and never prove it.</summary>
public sealed record PowerLimitAnswer
{
    /// <summary>The class that it claims: limited-power-source or class2.</summary>
    public required string Class { get; init; }

    /// <summary>What the numbers say: exceeds, within-numbers (only the listing proves it), unknown.</summary>
    public required string Verdict { get; init; }

    /// <summary>Output, verdict and what decides, in words.</summary>
    public required string Message { get; init; }

    internal static PowerLimitAnswer? Of(OutputAssessment output)
    {
        if (output.Output.ClaimedClass is not { } claimed) return null;
        PowerLimitAssessment limit = output.Box.AssessPowerLimit(output.Output.Number, claimed);
        return new PowerLimitAnswer { Class = Word.Of(limit.Class), Verdict = Word.Of(limit.Verdict), Message = limit.ToString() };
    }
}
