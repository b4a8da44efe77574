using System;

namespace CamPower.Supplies;

/// <summary>The most that a source behind a resistance delivers into any load. Source: <see cref="Sources.MaximumPower"/>.</summary>
internal static class PowerLimitKernel
{
    /// <summary>The most current: into a short, or into a load that stays just under the limit. [A]</summary>
    internal static double MostAmperes(double volts, double ohms, double limitAmperes) =>
        Math.Min(limitAmperes, volts / ohms);

    /// <summary>The most apparent power: at that current, or into a load that matches the resistance where less current gives more.
    /// [VA]</summary>
    internal static double MostVoltAmperes(double volts, double ohms, double limitAmperes)
    {
        if (ohms <= 0) return volts * limitAmperes;
        double amperes = Math.Min(limitAmperes, volts / (2 * ohms));
        return amperes * (volts - (amperes * ohms));
    }

    /// <summary>Peak of a voltage with a sine of ripple on it. [V]</summary>
    internal static double PeakVolts(double volts, double rmsRippleShare) => volts * (1 + (Math.Sqrt(2) * rmsRippleShare));
}
