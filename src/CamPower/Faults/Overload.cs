using System;
using CamPower.Faults;
using UnitsNet;

namespace CamPower;

/// <summary>An overload at the far end of an output: smaller than a short circuit, and without an end of its own.</summary>
/// <remarks>The conductors are taken at their hottest. The supply and an electronic limit may give less than is drawn.</remarks>
/// <example>
/// <code>
/// Overload half = study.OverloadOf(ElectricCurrent.FromAmperes(3));
/// Console.WriteLine($"{half}; conductors: {half.WithstandVerdict}");
/// </code>
/// </example>
public sealed class Overload : Overcurrent
{
    private readonly double _drawn;

    internal Overload(double amperes, FaultLoop loop, FaultSetting setting)
        : base(setting, setting.OverloadCases(amperes), loop.Conductors, [])
    {
        _drawn = amperes;
    }

    /// <summary>The current that is drawn. [A]</summary>
    public ElectricCurrent Drawn => ElectricCurrent.FromAmperes(_drawn);

    /// <summary>Current and opening, or what is missing, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{_drawn:G4} A drawn: {Words}");
}
