using System;
using UnitsNet;

namespace CamPower;

/// <summary>The current of one output in one condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class OutputInCondition
{
    internal OutputInCondition(Condition condition, double amperes, bool isDemandOnly)
    {
        Condition = condition;
        Amperes = amperes;
        IsDemandOnly = isDemandOnly;
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>The current with everything on the output drawing; what its loads ask for where <see cref="IsDemandOnly"/>. [A]</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>Whether the circuit has no operating point: the current is then what the loads ask for at the supply's voltage, and no cable carries it.</summary>
    public bool IsDemandOnly { get; }

    internal double Amperes { get; }

    /// <summary>Condition and current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Condition}: {(IsDemandOnly ? "asked for " : "")}{Amperes:0.###} A");
}
