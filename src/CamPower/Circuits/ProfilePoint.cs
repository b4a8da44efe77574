using System;
using UnitsNet;

namespace CamPower;

/// <summary>The voltage at one boundary between parts of a cable route.</summary>
/// <remarks>Immutable. A joint has no length: the points before and after it lie at the same distance.</remarks>
public sealed class ProfilePoint
{
    internal ProfilePoint(double meters, double volts, RunPart? after)
    {
        Meters = meters;
        Volts = volts;
        After = after;
    }

    /// <summary>Length along the route from the source, one way. [m]</summary>
    public Length Distance => Length.FromMeters(Meters);

    /// <summary>Voltage between the conductors there. [V]</summary>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(Volts);

    /// <summary>The part that ends there, or null at the source.</summary>
    public RunPart? After { get; }

    internal double Meters { get; }

    internal double Volts { get; }

    /// <summary>Distance and voltage in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Meters:0.###} m: {Volts:0.###} V");
}
