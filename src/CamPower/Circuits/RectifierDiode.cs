using System;

namespace CamPower.Circuits;

/// <summary>One diode of a rectifier: exponential, with a series resistance. SI doubles.</summary>
/// <param name="saturationAmperes">Saturation current, above 0. [A]</param>
/// <param name="slopeVolts">Emission coefficient times thermal voltage, above 0. [V]</param>
/// <param name="ohms">Series resistance, at least 0. [Ω]</param>
internal readonly struct RectifierDiode(double saturationAmperes, double slopeVolts, double ohms)
{
    /// <summary>kT/q at 27 °C, where circuit simulators state their diodes. [V]</summary>
    internal const double ThermalVolts = 0.025865;

    /// <summary>A silicon rectifier of 1 A: 0.93 V at 1 A.</summary>
    internal static RectifierDiode Silicon { get; } = new(AlternatingConstants.DiodeSaturation.Value,
        AlternatingConstants.DiodeEmission.Value * ThermalVolts, AlternatingConstants.DiodeResistance.Value);

    /// <summary>The voltage across it at a forward current, at least 0. [V]</summary>
    internal double VoltsAt(double amperes) => (slopeVolts * Math.Log(1 + (amperes / saturationAmperes))) + (ohms * amperes);

    /// <summary>dV/dI there. [Ω]</summary>
    internal double SlopeAt(double amperes) => (slopeVolts / (saturationAmperes + amperes)) + ohms;
}
