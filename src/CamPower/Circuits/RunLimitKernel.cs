using System;

namespace CamPower.Circuits;

/// <summary>Limits of one run: the inverse of <see cref="RunKernel"/>, in closed form. SI doubles, nothing allocated.</summary>
/// <remarks>
/// A load I(V) behind a loop R fed from Vs balances where Vs = V + R·I(V). Solved for R, for P or for Vs it gives each
/// of them at a load voltage V; on the stable branch V falls as R or P grows and rises with Vs. So the answer lies at
/// the higher of two voltages: the lowest one accepted, and the one where the branch ends, which is where the
/// derivative by V is zero. Source: <see cref="Sources.Kirchhoff"/>.
/// </remarks>
internal static class RunLimitKernel
{
    /// <summary>Load voltage at which the stable branch ends as the resistance grows; 0 where it does not end. [V]</summary>
    /// <remarks>R = (Vs − V)/I(V) is largest where (I₀ + G·Vs)·V² + 2·P·V − P·Vs = 0: at Vs/2 for constant power alone.
    /// A larger-of load ends at Vs/2 too, unless its current component holds it down to P/I₀.</remarks>
    internal static double CollapseVoltsByResistance(double sourceVolts, Load load)
    {
        double watts = load.Watts;
        if (watts == 0) return 0;
        if (load.IsLargerOf) return Math.Min(sourceVolts / 2, watts / load.Amperes);
        double others = (load.Amperes + (load.Siemens * sourceVolts)) * sourceVolts;
        return watts * sourceVolts / (watts + (Math.Sqrt(watts) * Math.Sqrt(watts + others)));
    }

    /// <summary>Load voltage at which the stable branch ends as the constant power grows; not above 0 where the others leave nothing.
    /// [V]</summary>
    internal static double CollapseVoltsByPower(double sourceVolts, double ohms, Load beside)
    {
        double left = Exact.MinusProduct(sourceVolts, ohms, beside.Amperes);
        return beside.IsLargerOf ? Math.Min(left, sourceVolts / 2) : left / (2 * (1 + (ohms * beside.Siemens)));
    }

    /// <summary>Load voltage at which the stable branch ends as the source voltage falls; 0 where it does not end. [V]</summary>
    internal static double CollapseVoltsBySource(double ohms, Load load)
    {
        if (load.Watts == 0) return 0;
        double matched = Math.Sqrt(ohms * load.Watts / (1 + (ohms * load.Siemens)));
        return load.IsLargerOf ? Math.Min(matched, load.Watts / load.Amperes) : matched;
    }

    /// <summary>Loop resistance that leaves the load a voltage; infinite for a load that draws nothing. [Ω]</summary>
    internal static double OhmsAt(double sourceVolts, double volts, Load load)
    {
        double amperes = load.AmperesAt(volts);
        return amperes > 0 ? (sourceVolts - volts) / amperes : double.PositiveInfinity;
    }

    /// <summary>Constant power beside the other components that lowers the load to a voltage; negative where they alone bring it lower.
    /// [W]</summary>
    internal static double WattsAt(double sourceVolts, double ohms, double volts, Load beside) => beside.IsLargerOf
        ? volts * (sourceVolts - volts) / ohms
        : volts * (Exact.MinusProduct(sourceVolts, ohms, beside.Amperes) - ((1 + (ohms * beside.Siemens)) * volts)) / ohms;

    /// <summary>Source voltage that leaves the load a voltage. [V]</summary>
    internal static double SourceVoltsAt(double ohms, double volts, Load load) => volts > 0 ? volts + (ohms * load.AmperesAt(volts)) : 0;

    /// <summary>Lowest load voltage at which the drop is at most a share of the source voltage; infinite where it never is. [V]</summary>
    /// <remarks>R·I(V) ≤ k·V with k = d/(1 − d): a quadratic in V for a sum of shares, its parts one by one for the larger of
    /// two.</remarks>
    internal static double VoltsAtDrop(double ohms, Load load, double dropShare)
    {
        double ratio = dropShare / (1 - dropShare);
        double power = ohms * load.Watts, current = ohms * load.Amperes;
        if (power == 0 && current == 0) return ohms * load.Siemens <= ratio ? 0 : double.PositiveInfinity;
        if (ratio == 0) return double.PositiveInfinity;
        if (load.IsLargerOf) return Math.Max(Math.Sqrt(power / ratio), current / ratio);
        double left = ratio - (ohms * load.Siemens);
        return left > 0 ? (current + Math.Sqrt((current * current) + (4 * left * power))) / (2 * left) : double.PositiveInfinity;
    }

    /// <summary>Length that takes up what the rest of the run leaves of a resistance. [m]</summary>
    internal static double Meters(double mostOhms, double otherOhms, double ohmsPerMeter) => (mostOhms - otherOhms) / ohmsPerMeter;

    /// <summary>Area of every conductor that takes up what the joints leave of a resistance; not above 0 where they leave nothing.
    /// [m²]</summary>
    internal static double SquareMeters(double mostOhms, double jointOhms, double ohmSquareMeters) =>
        ohmSquareMeters / (mostOhms - jointOhms);

    /// <summary>Temperature at which a linear resistance reaches a value, given that it grows. [°C]</summary>
    internal static double DegreesCelsius(double mostOhms, double ohmsAt20C, double ohmsPerKelvin) =>
        Celsius.Reference + ((mostOhms - ohmsAt20C) / ohmsPerKelvin);
}
