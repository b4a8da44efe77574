using System;

namespace CamPower.Circuits;

/// <summary>Where the power of a solved network goes: what the sources deliver, what the loads take, what is lost. [W]</summary>
/// <remarks>Source: <see cref="Sources.Kirchhoff"/>.</remarks>
internal readonly record struct PowerBalance(double Delivered, double Taken, double Lost)
{
    /// <summary>Delivered less taken less lost: rounding only. [W]</summary>
    /// <remarks>Normally below 1e-9 of <see cref="Delivered"/>; branches of micro-ohms in a mesh, whose current is
    /// a small difference of voltages over a small resistance, raise it.</remarks>
    internal double Residual => Delivered - Taken - Lost;

    /// <summary>The three powers in the invariant culture.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Delivered:0.###} W delivered = {Taken:0.###} W taken + {Lost:0.###} W lost");
}
