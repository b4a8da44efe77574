using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Mains;

/// <summary>A receptacle in a condition: what each box that is plugged into it takes.</summary>
/// <remarks>Immutable. Currents of several boxes are added as if they were in phase, which is the most that they can make.</remarks>
public sealed class ReceptacleInCondition
{
    internal ReceptacleInCondition(Condition condition, double lineVolts, IReadOnlyList<LineDraw> draws)
    {
        Condition = condition;
        LineVoltage = ElectricPotential.FromVolts(lineVolts);
        Draws = draws;
        KnownAmperes = draws.Sum(d => d.Amperes ?? 0);
        IsKnown = draws.All(d => d.Amperes is not null);
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>Voltage of the line: the condition's where it states one, else the receptacle's. [V, RMS]</summary>
    public ElectricPotential LineVoltage { get; }

    /// <summary>What each box takes, in the site's order.</summary>
    public IReadOnlyList<LineDraw> Draws { get; }

    /// <summary>Current of all of them; null where that of one is not known. [A, RMS]</summary>
    public ElectricCurrent? Current => IsKnown ? ElectricCurrent.FromAmperes(KnownAmperes) : null;

    /// <summary>Current of those whose current is known: the least that is plugged in. [A, RMS]</summary>
    public ElectricCurrent KnownCurrent => ElectricCurrent.FromAmperes(KnownAmperes);

    /// <summary>That of the largest known current; of several the first.</summary>
    internal static ReceptacleInCondition WorstOf(IEnumerable<ReceptacleInCondition> conditions) =>
        conditions.Aggregate((worst, other) => other.KnownAmperes > worst.KnownAmperes ? other : worst);

    internal bool IsKnown { get; }

    internal double KnownAmperes { get; }

    /// <summary>The condition and the current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Condition}: {(IsKnown ? "" : "at least ")}{KnownAmperes:0.00} A");
}
