using System;
using UnitsNet;

namespace CamPower;

/// <summary>The total current of a box in one condition against what its supply may deliver there.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxInCondition
{
    internal BoxInCondition(Condition condition, double amperes, double deratedAmperes, bool isDemandOnly)
    {
        Condition = condition;
        Amperes = amperes;
        DeratedAmperes = deratedAmperes;
        IsDemandOnly = isDemandOnly;
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>Total current of all outputs. [A]</summary>
    public ElectricCurrent TotalCurrent => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>What the supply may deliver at the temperature of the box, the inlet voltage of the condition and the altitude of the site; 0 where it is not rated to run. [A]</summary>
    public ElectricCurrent DeratedRating => ElectricCurrent.FromAmperes(DeratedAmperes);

    /// <summary>Whether some output has no operating point: its part of the total is then what its loads ask for at the supply's voltage.</summary>
    public bool IsDemandOnly { get; }

    internal double Amperes { get; }

    internal double DeratedAmperes { get; }

    /// <summary>Whether this is worse than another condition of the same box: less of the rating left.</summary>
    internal bool IsWorseThan(BoxInCondition other) => Loading > other.Loading || (Loading.Equals(other.Loading) && Amperes > other.Amperes);

    // Nothing is no load, also of a supply that may not run.
    private double Loading => Amperes > 0 ? Amperes / DeratedAmperes : 0;

    /// <summary>Condition, total and rating in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Condition}: {(IsDemandOnly ? "asked for " : "")}{Amperes:0.###} A of {DeratedAmperes:0.###} A");
}
