using System;
using CamPower.Supplies;

namespace CamPower.Assessment;

/// <summary>Where the terminals of a supply come to rest that is asked for more than its limit. SI doubles.</summary>
/// <remarks>
/// The voltage falls from its full value until the supply gives what is taken. That holds only where what is taken falls faster with the
/// voltage than what is given: the first such point on the way down. What loads of constant power, current and resistance take behind their
/// cables is convex in the voltage, and what the supply gives is a straight line, or the lower of two: secants from the right never pass
/// the point. Where they rise instead there is none, as for a load of constant power on a constant current.
/// </remarks>
internal static class RailBalance
{
    private const int MostSteps = 100, Halvings = 60;
    private const double FirstStep = 1e-4, Close = 1e-10;

    /// <summary>Whether a supply knows what it gives beyond its limit, or without one.</summary>
    internal static bool IsKnown(SupplyOutput supply) =>
        supply.Overload is OverloadBehavior overload
            && (overload.Limit is not null || supply.SourceResistance is not null || supply is DcOutput { Unregulated: not null });

    /// <summary>The current beyond which a supply no longer holds its voltage: its limit, or what it is rated for where it has none or
    /// declares none. [A]</summary>
    internal static double LimitOf(SupplyOutput supply) =>
        supply.Overload?.Limit is null ? supply.RatedAmperes : supply.Overload.Lowest.LimitAmperes;

    /// <summary>Current of a supply in its limit at a voltage; without a limit the current that its resistance lets through, and of an
    /// unregulated one that of the line through its two points. [A]</summary>
    internal static double GivenAt(SupplyOutput supply, double fullVolts, double volts)
    {
        if (supply.Overload?.Limit is null && supply is DcOutput { Unregulated: UnregulatedCurve curve }) return curve.LineAmperesAt(volts);
        return supply.Overload?.Limit is null && supply.SourceOhms > 0
            ? (fullVolts - volts) / supply.SourceOhms
            : supply.Overload!.Lowest.AmperesAt(volts / fullVolts);
    }

    /// <summary>The same where a fault draws more than the supply is rated for: its resistance takes its part below its limit, too.
    /// [A]</summary>
    internal static double GivenInFault(SupplyOutput supply, double fullVolts, double volts) => Math.Min(GivenAt(supply, fullVolts, volts),
        supply.SourceOhms > 0 && supply is not DcOutput { Unregulated: not null }
            ? (fullVolts - volts) / supply.SourceOhms
            : double.PositiveInfinity);

    /// <summary>The first voltage on the way down from one to another at which it gives what is taken; NaN where there is none.
    /// [V]</summary>
    /// <param name="given">What the supply gives at a voltage. [A]</param>
    /// <param name="fullVolts">Its voltage below its limit. [V]</param>
    /// <param name="fromVolts">Where to begin. [V]</param>
    /// <param name="toVolts">Where to end. [V]</param>
    /// <param name="taken">What is taken at a voltage; infinite where the circuits have no operating point. [A]</param>
    internal static double Between(
        Func<double, double> given, double fullVolts, double fromVolts, double toVolts, Func<double, double> taken)
    {
        double right = fromVolts, atRight = Missing(right);
        if (atRight <= 0) return right;
        double left = right * (1 - FirstStep);
        for (int step = 0; step < MostSteps; step++)
        {
            double atLeft = Missing(left);
            if (atLeft <= 0) return Bisection.LastHeld(left, right, Halvings, volts => Missing(volts) <= 0);
            double slope = (atRight - atLeft) / (right - left);
            double next = left - (atLeft / slope);
            if (!(slope > 0) || !(next > toVolts)) return double.NaN;
            if (left - next <= Close * fullVolts) return left;
            (right, atRight, left) = (left, atLeft, next);
        }

        return double.NaN;

        double Missing(double volts) => taken(volts) - given(volts);
    }
}
