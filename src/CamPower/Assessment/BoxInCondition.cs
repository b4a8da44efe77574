using System;
using System.Linq;
using CamPower.Heat;
using UnitsNet;

namespace CamPower;

/// <summary>The total current of a box in one condition against what its supply may deliver there.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxInCondition
{
    private readonly bool _hasEnclosure;

    /// <param name="box">The box.</param>
    /// <param name="condition">The condition.</param>
    /// <param name="altitudeMeters">Height above the sea. [m]</param>
    /// <param name="amperes">What all its outputs take. [A]</param>
    /// <param name="areOwnLossesKnown">Whether it is known what the box itself loses in its enclosure.</param>
    /// <param name="losses">What is lost in its enclosure, or null.</param>
    /// <param name="heat">How warm its enclosure gets, or null.</param>
    /// <param name="isDemandOnly">Whether some output has no operating point.</param>
    internal BoxInCondition(DistributionBox box, Condition condition, double altitudeMeters, double amperes, bool areOwnLossesKnown, BoxLosses? losses,
        HeatedEnclosure? heat, bool isDemandOnly)
    {
        Condition = condition;
        Amperes = amperes;
        Losses = losses;
        Heat = heat;
        _hasEnclosure = box.Enclosure is not null;
        AreOwnLossesUnknown = _hasEnclosure && !areOwnLossesKnown;
        SupplyCelsius = Heat?.InsideCelsius ?? condition.At.BoxCelsius;
        LowestCelsius = box.Supply.Derating.LowestCelsius;
        HighestCelsius = box.Supply.Derating.HighestCelsiusAt(altitudeMeters);
        DeratedAmperes = box.Supply.DeratedAmperesAt(SupplyCelsius, condition.LineVolts, altitudeMeters);
        IsDemandOnly = isDemandOnly;
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>Total current of all outputs. [A]</summary>
    public ElectricCurrent TotalCurrent => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>
    /// Temperature of the air around the supply and the protective devices: in the enclosure, or that of the surroundings where
    /// the box declares none; null where it is not known, because the efficiency of the supply, or of another one in its cabinet, is not declared. [°C]
    /// </summary>
    /// <remarks>It is a lower bound where <see cref="IsInsideAtLeast"/> says so.</remarks>
    public Temperature? InsideTemperature => IsInsideUnknown ? null : Temperature.FromDegreesCelsius(SupplyCelsius);

    /// <summary>Whether it is at least so warm inside: the supply, or another one in its cabinet, is loaded beyond the end of its declared efficiency, and counts with what it loses there.</summary>
    public bool IsInsideAtLeast => Losses?.IsAtLeast == true;

    /// <summary>How warm the enclosure gets; null where the box declares none, or where the losses are not known.</summary>
    public HeatedEnclosure? Heat { get; }

    /// <summary>What is lost in the enclosure; null where the box declares none, or where the efficiency of a supply in it is not declared.</summary>
    public BoxLosses? Losses { get; }

    /// <summary>What the supply may deliver at the temperature inside, the inlet voltage of the condition and the altitude of the site; 0 where it is not rated to run. [A]</summary>
    /// <remarks>Where <see cref="InsideTemperature"/> is not known it is that of the air around the box, and too large; where that is a lower bound it is at most this.</remarks>
    public ElectricCurrent DeratedRating => ElectricCurrent.FromAmperes(DeratedAmperes);

    /// <summary>Whether some output has no operating point: its part of the total is then what its loads ask for at the supply's voltage.</summary>
    public bool IsDemandOnly { get; }

    internal double Amperes { get; }

    internal double DeratedAmperes { get; }

    internal bool IsInsideUnknown => _hasEnclosure && Heat is null;

    /// <summary>Whether it stands in an enclosure, and what it loses there is not known.</summary>
    internal bool AreOwnLossesUnknown { get; }

    /// <summary>Whether it stands in an enclosure, and it is only known what it loses there at least.</summary>
    internal bool AreOwnLossesAtLeast => Losses?.AreOwnAtLeast == true;

    /// <summary>The temperature that derates the supply: inside, or around the box where the inside is not known. [°C]</summary>
    internal double SupplyCelsius { get; }

    /// <summary>The coldest air in which the supply is rated to run. [°C]</summary>
    internal double LowestCelsius { get; }

    /// <summary>The hottest air in which the supply is rated to run. [°C]</summary>
    internal double HighestCelsius { get; }

    /// <summary>Whether the supply has to give something in air that is too hot for it.</summary>
    internal bool IsTooHot => Amperes > 0 && SupplyCelsius > HighestCelsius;

    /// <summary>Whether the supply has to give something in air that is too cold for it.</summary>
    internal bool IsTooCold => Amperes > 0 && SupplyCelsius < LowestCelsius;

    /// <summary>Whether this is worse than another condition of the same box: less of the rating left.</summary>
    internal bool IsWorseThan(BoxInCondition other) => Loading > other.Loading || (Loading.Equals(other.Loading) && Amperes > other.Amperes);

    // Nothing is no load, also of a supply that may not run.
    private double Loading => Amperes > 0 ? Amperes / DeratedAmperes : 0;

    /// <summary>How the temperature inside was worked out, from the losses on.</summary>
    /// <exception cref="InvalidOperationException">The box has no enclosure, or its losses are not known.</exception>
    public Derivation Explain() => Heat is null || Losses is null
        ? throw new InvalidOperationException("There is nothing to explain: the box has no enclosure, or the efficiency of a supply in it is not declared.")
        : new($"{Heat.Enclosure}, {Condition}", Losses.Steps().Concat(HeatDerivation.Steps(Heat)), Heat.ToString());

    /// <summary>Condition, total and rating in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Condition}: {(IsDemandOnly ? "asked for " : "")}{Amperes:0.###} A of {DeratedAmperes:0.###} A");
}
