using System;

namespace CamPower.Circuits;

/// <summary>Two sources on the same terminals, each through a diode. SI doubles.</summary>
/// <remarks>
/// I = Is·(exp(V/s) − 1) in each diode, and both have the same voltage behind them: V1 − s·ln(1 + I1/Is1) = V2 − s·ln(1 + I2/Is2). With
/// I1 + I2 = I and q = exp(−(V1 − V2)/s) that is I1 = Is1·(1 + I/Is2 − q)/(q + Is1/Is2). No diode carries current backwards: where
/// I1 would be more than I, the other diode blocks. Resistances of leads and diodes are left out: they make shares more even.
/// </remarks>
internal static class DiodePair
{
    /// <summary>What the source of the higher voltage gives. [A]</summary>
    /// <param name="amperes">What both give together, at least 0. [A]</param>
    /// <param name="surplusVolts">Its voltage less that of the other, at least 0. [V]</param>
    /// <param name="ownSaturation">Saturation current of its diode, above 0. [A]</param>
    /// <param name="otherSaturation">That of the other diode, above 0. [A]</param>
    /// <param name="slopeVolts">Emission coefficient times thermal voltage, above 0. [V]</param>
    internal static double HigherAmperes(
        double amperes, double surplusVolts, double ownSaturation, double otherSaturation, double slopeVolts)
    {
        double fallen = Math.Exp(-surplusVolts / slopeVolts);
        return Math.Min(amperes,
            ownSaturation * (1 + (amperes / otherSaturation) - fallen) / (fallen + (ownSaturation / otherSaturation)));
    }

    /// <summary>The saturation current of a diode that has a voltage at a current. [A]</summary>
    internal static double Saturation(double amperes, double volts, double slopeVolts) => amperes / (Math.Exp(volts / slopeVolts) - 1);
}
