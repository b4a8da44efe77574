using System;
using UnitsNet;

namespace CamPower;

/// <summary>What stands behind a fault: a supply, its source resistance and what it does in overload.</summary>
/// <remarks>Immutable. The most current flows at the highest voltage of the supply's tolerance, the least at the lowest.</remarks>
/// <example>
/// <code>
/// var source = new FaultSource(supply, ElectricResistance.FromMilliohms(50), OverloadBehaviour.ConstantCurrent(ElectricCurrent.FromAmperes(2.2)));
/// </code>
/// </example>
public sealed class FaultSource
{
    /// <summary>Describes a source.</summary>
    /// <param name="supply">The supply. An alternating one counts by its RMS voltage, with resistance alone.</param>
    /// <param name="sourceResistance">Resistance behind the terminals, from 1 µΩ to 100 MΩ. [Ω]</param>
    /// <param name="overload">What the supply does in overload.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sourceResistance"/> is outside its range.</exception>
    public FaultSource(Supply supply, ElectricResistance sourceResistance, OverloadBehaviour overload)
    {
        Supply = Require.NotNull(supply, nameof(supply));
        Ohms = Require.Within(sourceResistance.Ohms, 1e-6, 1e8, nameof(sourceResistance), "Ω");
        SourceResistance = sourceResistance;
        Overload = Require.NotNull(overload, nameof(overload));
    }

    /// <summary>The supply.</summary>
    public Supply Supply { get; }

    /// <summary>Resistance behind the terminals. [Ω]</summary>
    public ElectricResistance SourceResistance { get; }

    /// <summary>What the supply does in overload.</summary>
    public OverloadBehaviour Overload { get; }

    internal double Ohms { get; }

    /// <summary>The supply and its behaviour; never throws.</summary>
    public override string ToString() => $"{Supply}, {Overload}";
}
