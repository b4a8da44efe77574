using System.Collections.Generic;
using System.Linq;
using CamPower;

namespace PlanService.Answers;

/// <summary>A short at one place of what an output feeds. What is not stated is named and not guessed.</summary>
public sealed record ShortAnswer
{
    /// <summary>Where: "terminals", the name of a joint, or that of a junction.</summary>
    public required string Place { get; init; }

    /// <summary>The devices that are connected there; none at the terminals and at a joint.</summary>
    public required IReadOnlyList<string> Devices { get; init; }

    /// <summary>How far along the route, one way. [m]</summary>
    public required double DistanceInMeters { get; init; }

    /// <summary>The least current that the resistances alone let flow, as text; absent where none is declared.</summary>
    public string? SmallestProspective { get; init; }

    /// <summary>The least current that the resistances alone let flow. [A]</summary>
    public double? SmallestProspectiveInAmperes { get; init; }

    /// <summary>The most current that the resistances alone let flow, as text; absent where none is declared.</summary>
    public string? LargestProspective { get; init; }

    /// <summary>The most current that the resistances alone let flow. [A]</summary>
    public double? LargestProspectiveInAmperes { get; init; }

    /// <summary>The least current that heats the device, limited by supply and device, as text: RMS where it pulses; 0 where the supply shuts down, or its overload behavior is not declared.</summary>
    public required string Smallest { get; init; }

    /// <summary>The least current that heats the device. [A]</summary>
    public required double SmallestInAmperes { get; init; }

    /// <summary>The most current once capacitors are discharged, limited by supply and device, as text; absent where nothing that is declared bounds it.</summary>
    public string? Largest { get; init; }

    /// <summary>The most current once capacitors are discharged. [A]</summary>
    public double? LargestInAmperes { get; init; }

    /// <summary>Whether the protective device interrupts it: operates, may-operate, does-not-operate; none where too little is declared.</summary>
    public required string Verdict { get; init; }

    /// <summary>It is not interrupted before this; absent where it never is. [s]</summary>
    public double? EarliestInSeconds { get; init; }

    /// <summary>It has been interrupted by then; absent where nothing bounds the time. [s]</summary>
    public double? LatestInSeconds { get; init; }

    /// <summary>Whether the device may interrupt so much current; absent where its breaking capacity or the supply's limit is not declared.</summary>
    public bool? IsWithinBreakingCapacity { get; init; }

    /// <summary>Whether the conductors on the way withstand it: no-conductor, withstands, hotter-than-in-service, does-not-withstand, unknown.</summary>
    public required string Conductors { get; init; }

    /// <summary>What a verdict would need, or could be narrowed with, and is not stated.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>What the supply does meanwhile.</summary>
    public required SupplyAnswer Supply { get; init; }

    internal static ShortAnswer Of(ShortCircuit current)
    {
        bool isKnown = current.Opening.Verdict != OperatingVerdict.None;
        return new ShortAnswer
        {
            Place = current.Place,
            Devices = [.. current.Devices.Select(d => d.Name)],
            DistanceInMeters = current.Distance.Meters,
            SmallestProspective = Written.TextOrNull(current.SmallestProspective),
            SmallestProspectiveInAmperes = current.SmallestProspective?.Amperes,
            LargestProspective = Written.TextOrNull(current.LargestProspective),
            LargestProspectiveInAmperes = current.LargestProspective?.Amperes,
            Smallest = Written.Text(current.Smallest),
            SmallestInAmperes = current.Smallest.Amperes,
            Largest = Written.TextOrNull(current.Largest),
            LargestInAmperes = current.Largest?.Amperes,
            Verdict = Word.Of(current.Verdict),
            EarliestInSeconds = isKnown ? current.Opening.Earliest?.Seconds : null,
            LatestInSeconds = isKnown ? current.Opening.Latest?.Seconds : null,
            IsWithinBreakingCapacity = current.IsWithinBreakingCapacity,
            Conductors = Word.Of(current.WithstandVerdict),
            Missing = Word.OfFlags(current.Missing),
            Supply = SupplyAnswer.Of(current.Supply),
        };
    }
}
