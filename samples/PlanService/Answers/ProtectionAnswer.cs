using CamPower;

namespace PlanService.Answers;

/// <summary>The protective device of an output in one condition: what it should carry and not notice.</summary>
public sealed record ProtectionAnswer
{
    /// <summary>The condition.</summary>
    public required string Condition { get; init; }

    /// <summary>Current of the output, as text.</summary>
    public required string Current { get; init; }

    /// <summary>Current of the output. [A]</summary>
    public required double CurrentInAmperes { get; init; }

    /// <summary>What the device carries continuously at the temperature of the box, as text; absent where nothing limits it, or it is not known.</summary>
    public string? Carried { get; init; }

    /// <summary>What the device carries continuously. [A]</summary>
    public double? CarriedInAmperes { get; init; }

    /// <summary>Whether the current opens the device, which it should not: operates, may-operate, does-not-operate; none where that is not known.</summary>
    public required string Opening { get; init; }

    /// <summary>Whether it may open within the condition though nothing is wrong.</summary>
    public required bool MayTrip { get; init; }

    internal static ProtectionAnswer Of(ProtectionInCondition protection) => new()
    {
        Condition = protection.Condition.Name,
        Current = Written.Text(protection.Current),
        CurrentInAmperes = protection.Current.Amperes,
        Carried = Written.TextOrNull(protection.Carried),
        CarriedInAmperes = protection.Carried?.Amperes,
        Opening = Word.Of(protection.Opening.Verdict),
        MayTrip = protection.MayTrip,
    };
}
