using System;
using UnitsNet;

namespace CamPower;

/// <summary>A cable that a measured loop could be, and how far it is off.</summary>
/// <remarks>Immutable. <see cref="CableIdentification"/> makes it.</remarks>
/// <example><code>CableCandidate best = identification.Groups[0][0];</code></example>
public sealed class CableCandidate
{
    private readonly double _ohms, _deviation;

    internal CableCandidate(Cable cable, double ohms, double measuredOhms, double tolerance)
    {
        Cable = cable;
        _ohms = ohms;
        _deviation = (measuredOhms / ohms) - 1;
        Fits = AbsoluteDeviation <= tolerance;
    }

    /// <summary>The cable.</summary>
    public Cable Cable { get; }

    /// <summary>Expected reading of the loop if it is this cable. [Ω]</summary>
    public ElectricResistance ExpectedLoop => ElectricResistance.FromOhms(_ohms);

    /// <summary>How far the reading is above what was expected, as a share of it; negative where it is below.</summary>
    public Ratio Deviation => Ratio.FromDecimalFractions(_deviation);

    /// <summary>Whether the reading lies within the tolerance of it.</summary>
    public bool Fits { get; }

    internal double Ohms => _ohms;

    internal double AbsoluteDeviation => Math.Abs(_deviation);

    /// <summary>Cable and deviation in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Cable} ({_ohms:G4} Ω, reading {100 * _deviation:+0.0;-0.0;0.0} %)");
}
