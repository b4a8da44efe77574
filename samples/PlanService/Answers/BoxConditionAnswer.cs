using CamPower;

namespace PlanService.Answers;

/// <summary>One box or adapter in one condition: how warm it gets, and what its supply may deliver there.</summary>
public sealed record BoxConditionAnswer
{
    /// <summary>The condition.</summary>
    public required string Condition { get; init; }

    /// <summary>Current of all outputs, as text.</summary>
    public required string TotalCurrent { get; init; }

    /// <summary>Current of all outputs. [A]</summary>
    public required double TotalCurrentInAmperes { get; init; }

    /// <summary>What the supply may deliver, derated by the temperature inside, as text; too large where that is not known.</summary>
    public required string DeratedRating { get; init; }

    /// <summary>What the supply may deliver. [A]</summary>
    public required double DeratedRatingInAmperes { get; init; }

    /// <summary>Temperature of the air around the supply, as text: in the enclosure, or of the surroundings without one; absent where the supply's losses are not known.</summary>
    public string? Inside { get; init; }

    /// <summary>Temperature of the air around the supply. [°C]</summary>
    public double? InsideInDegreesCelsius { get; init; }

    /// <summary>Heat lost in the enclosure, as text; absent without an enclosure, or where the supply's losses are not known.</summary>
    public string? Losses { get; init; }

    /// <summary>Heat lost in the enclosure. [W]</summary>
    public double? LossesInWatts { get; init; }

    /// <summary>Heat that the enclosure takes up from the sun, as text; absent where its losses are.</summary>
    public string? SolarGain { get; init; }

    /// <summary>Heat that the enclosure takes up from the sun. [W]</summary>
    public double? SolarGainInWatts { get; init; }

    internal static BoxConditionAnswer Of(BoxInCondition box) => new()
    {
        Condition = box.Condition.Name,
        TotalCurrent = Written.Text(box.TotalCurrent),
        TotalCurrentInAmperes = box.TotalCurrent.Amperes,
        DeratedRating = Written.Text(box.DeratedRating),
        DeratedRatingInAmperes = box.DeratedRating.Amperes,
        Inside = Written.TextOrNull(box.InsideTemperature),
        InsideInDegreesCelsius = box.InsideTemperature?.DegreesCelsius,
        Losses = Written.TextOrNull(box.Heat?.Losses),
        LossesInWatts = (double?)box.Heat?.Losses.Watts,
        SolarGain = Written.TextOrNull(box.Heat?.SolarGain),
        SolarGainInWatts = (double?)box.Heat?.SolarGain.Watts,
    };
}
