using System.Collections.Generic;
using System.Linq;
using CamPower;

namespace PlanService.Answers;

/// <summary>What a supply does while a short at one of its outputs lasts, and which devices at its other outputs go dark.</summary>
public sealed record SupplyAnswer
{
    /// <summary>What its voltage does: stays-up, dips, pulses, off; unknown where its overload behavior is not declared.</summary>
    public required string State { get; init; }

    /// <summary>Voltage at the other outputs, as text; absent where it is not known.</summary>
    public string? Voltage { get; init; }

    /// <summary>Voltage at the other outputs. [V]</summary>
    public double? VoltageInVolts { get; init; }

    /// <summary>The condition in which the other outputs take most.</summary>
    public required string Condition { get; init; }

    /// <summary>The devices at other outputs that were up and drop out.</summary>
    public required IReadOnlyList<string> Dark { get; init; }

    /// <summary>Those that get less than they accept and declare no drop-out voltage: perhaps dark.</summary>
    public required IReadOnlyList<string> PerhapsDark { get; init; }

    internal static SupplyAnswer Of(SupplyDuringFault rail) => new()
    {
        State = Word.Of(rail.State),
        Voltage = Written.TextOrNull(rail.Voltage),
        VoltageInVolts = rail.Voltage?.Volts,
        Condition = rail.Condition.Name,
        Dark = [.. rail.Dark.Select(d => d.Name)],
        PerhapsDark = [.. rail.BelowWindow.Select(d => d.Name)],
    };
}
