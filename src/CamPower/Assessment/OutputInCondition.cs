using System;
using UnitsNet;

namespace CamPower;

/// <summary>The current of one output in one condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class OutputInCondition
{
    internal OutputInCondition(Condition condition, double amperes, bool isLowerBound)
    {
        Condition = condition;
        Amperes = amperes;
        IsLowerBound = isLowerBound;
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>The current with everything on the output drawing. [A]</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>Whether the circuit has no operating point, so that the current is only known to be at least this.</summary>
    public bool IsLowerBound { get; }

    internal double Amperes { get; }

    /// <summary>Condition and current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Condition}: {(IsLowerBound ? "at least " : "")}{Amperes:0.###} A");
}
