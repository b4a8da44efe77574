using System;

namespace CamPower.Tests.Circuits;

/// <summary>Searches a load line for its operating point, knowing nothing of discriminants.</summary>
/// <remarks>What is left at the load, Vs − R·I(V) − V, is concave for every load here. Its peak is found by golden section; an
/// operating point exists where the peak is not negative, and the stable one is the crossing above the peak.</remarks>
internal static class LoadLine
{
    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    /// <summary>The highest voltage at which the load line balances, or 0.</summary>
    internal static double HighestVoltage(double sourceVolts, double ohms, Func<double, double> amperes)
    {
        double peak = Peak(Surplus, 0, sourceVolts);
        return Surplus(peak) < 0 ? 0 : Crossing(Surplus, peak, sourceVolts);

        double Surplus(double volts) => sourceVolts - (ohms * amperes(volts)) - volts;
    }

    /// <summary>The lowest voltage at which it balances, or 0 where it balances at every low voltage.</summary>
    internal static double LowestVoltage(double sourceVolts, double ohms, Func<double, double> amperes)
    {
        double peak = Peak(Surplus, 0, sourceVolts), low = sourceVolts * 1e-12;
        return Surplus(low) > 0 ? 0 : Crossing(Surplus, peak, low);

        double Surplus(double volts) => sourceVolts - (ohms * amperes(volts)) - volts;
    }

    /// <summary>Where a function of one peak is the largest.</summary>
    internal static double Peak(Func<double, double> f, double low, double high)
    {
        for (int i = 0; i < 200; i++)
        {
            double left = high - (Golden * (high - low)), right = low + (Golden * (high - low));
            if (f(left) < f(right)) low = left;
            else high = right;
        }

        return high;
    }

    // Bisection between a voltage of surplus and one of want.
    private static double Crossing(Func<double, double> surplus, double positive, double negative)
    {
        for (int i = 0; i < 200; i++)
        {
            double middle = (positive + negative) / 2;
            if (surplus(middle) >= 0) positive = middle;
            else negative = middle;
        }

        return positive;
    }
}
