using System;
#if NET
using System.Numerics;
#endif

namespace CamPower.Circuits;

/// <summary>One source, one loop resistance, one load: the single place of its formulas. SI doubles, nothing allocated.</summary>
/// <remarks>
/// A load P/V + I₀ + G·V at the end of a loop R fed from Vs obeys (1 + R·G)·V² − (Vs − R·I₀)·V + R·P = 0.
/// There is an operating point only if Vs > R·I₀ and the discriminant is not negative. Of its two roots the
/// upper is stable. Sums of positive numbers only: nothing cancels but in the discriminant, which is compensated.
/// Sources: <see cref="Sources.Kirchhoff"/>, <see cref="Sources.MaximumPower"/>.
/// </remarks>
internal static class RunKernel
{
    /// <summary>What <see cref="LoadVolts(double,double,double,double,double)"/> gives when no operating point exists.</summary>
    internal const double NoOperatingPoint = 0;

    private const double KinkRounding = 1e-15;

    /// <summary>Terminal voltage of the load on the stable branch, or <see cref="NoOperatingPoint"/>. [V]</summary>
    internal static double LoadVolts(double sourceVolts, double ohms, Load load)
    {
        if (!load.IsLargerOf) return LoadVolts(sourceVolts, ohms, load.Watts, load.Amperes, load.Siemens);

        // Above P/I₀ the current component is the larger, below it the power component is; at it both are, to rounding.
        double atCurrent = Exact.MinusProduct(sourceVolts, ohms, load.Amperes);
        if (atCurrent > 0 && atCurrent * load.Amperes >= load.Watts * (1 - KinkRounding)) return atCurrent;
        double atPower = LoadVolts(sourceVolts, ohms, load.Watts, 0, 0);
        return atPower * load.Amperes <= load.Watts ? atPower : NoOperatingPoint;
    }

    /// <summary>The same from the three components. [V, Ω, W, A, S]</summary>
    internal static double LoadVolts(double sourceVolts, double ohms, double watts, double amperes, double siemens)
    {
        double left = Exact.MinusProduct(sourceVolts, ohms, amperes);
        double gain = 1 + (ohms * siemens);
        double discriminant = Discriminant(left, ohms * gain, watts);
        return left > 0 && discriminant >= 0 ? (left + Math.Sqrt(discriminant)) / (2 * gain) : NoOperatingPoint;
    }

#if NET
    /// <summary>The same of several constant powers: the formula without other shares, with the same bits. [V, Ω, W]</summary>
    internal static Vector<double> LoadVolts(Vector<double> sourceVolts, Vector<double> ohms, Vector<double> watts)
    {
        Vector<double> discriminant = Exact.DifferenceOfProducts(sourceVolts, sourceVolts, 4 * watts, ohms);
        Vector<double> root = (sourceVolts + Vector.SquareRoot(discriminant)) * 0.5;
        return Vector.ConditionalSelect(
            Vector.GreaterThanOrEqual(discriminant, Vector<double>.Zero), root, new Vector<double>(NoOperatingPoint));
    }
#endif

    /// <summary>(Vs − R·I₀)² − 4·R·(1 + R·G)·P, compensated: near the limit its plain form loses its digits. [V²]</summary>
    internal static double Discriminant(double left, double ohmsTimesGain, double watts) =>
        Exact.DifferenceOfProducts(left, left, 4 * watts, ohmsTimesGain);

    /// <summary>The lower root, where more current would lift the power that the load gets: a point that does not last. [V]</summary>
    internal static double UnstableVolts(double sourceVolts, double ohms, Load load, double loadVolts) =>
        ohms * load.Watts / ((1 + (ohms * load.Siemens)) * UpperRootOfPower(sourceVolts, ohms, load, loadVolts));

    /// <summary>The upper root that belongs to the lower one. Of a larger-of load it is that of its power component, also where
    /// its current component sets the voltage; never less than half of the source voltage, where rounding may lose it. [V]</summary>
    internal static double UpperRootOfPower(double sourceVolts, double ohms, Load load, double loadVolts) =>
        load.IsLargerOf ? Math.Max(LoadVolts(sourceVolts, ohms, load.Watts, 0, 0), sourceVolts / 2) : loadVolts;

    /// <summary>The most constant power that the loop could carry beside the other components; infinite without resistance. [W]</summary>
    /// <remarks>A larger-of load has nothing beside it: its limit is the matched load's, unless its current component keeps
    /// the voltage above that of the match; then it is what that current carries.</remarks>
    internal static double MostWatts(double sourceVolts, double ohms, Load load)
    {
        double left = Exact.MinusProduct(sourceVolts, ohms, load.Amperes);
        if (!(left > 0)) return 0;
        if (IsLimitedByCurrent(sourceVolts, left, load)) return left * load.Amperes;
        double matched = load.IsLargerOf ? sourceVolts : left;
        return matched * matched / (4 * ohms * (1 + (ohms * load.Siemens)));
    }

    /// <summary>The constant current that takes all of the source voltage; infinite without resistance. [A]</summary>
    internal static double MostAmperes(double sourceVolts, double ohms) => sourceVolts / ohms;

    /// <summary>Whether a larger-of load runs out of voltage for its current component before it reaches the matched load.</summary>
    internal static bool IsLimitedByCurrent(double sourceVolts, double left, Load load) =>
        load.IsLargerOf && 2 * left < sourceVolts;
}
