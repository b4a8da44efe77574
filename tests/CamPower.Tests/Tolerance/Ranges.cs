using System;
using System.Collections.Generic;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Tests.Tolerance;

/// <summary>Tolerances from bare numbers.</summary>
internal static class Ranges
{
    internal static UncertainRange Uniform(double low, double high) => Shares(low, high, UncertaintyShape.Uniform);

    internal static UncertainRange Shares(double low, double high, UncertaintyShape shape) =>
        UncertainRange.OfShare(Ratio.FromDecimalFractions(low), Ratio.FromDecimalFractions(high), shape);

    internal static UncertainRange Kelvins(double low, double high) => UncertainRange.OfTemperature(
        TemperatureDelta.FromKelvins(low), TemperatureDelta.FromKelvins(high), UncertaintyShape.Uniform);

    /// <summary>Nothing is uncertain but what is given.</summary>
    internal static SiteTolerance Only(params (UncertainQuantity Quantity, UncertainRange Range)[] ranges)
    {
        SiteTolerance tolerance = SiteTolerance.Standard;
        foreach (UncertainQuantity quantity in Enum.GetValues<UncertainQuantity>())
        {
            tolerance = tolerance.With(quantity, quantity == UncertainQuantity.CableTemperature ? Kelvins(0, 0) : Uniform(0, 0));
        }

        foreach ((UncertainQuantity quantity, UncertainRange range) in ranges) tolerance = tolerance.With(quantity, range);
        return tolerance;
    }

    /// <summary>Every corner of the given parts.</summary>
    internal static IEnumerable<double[]> CornersOf(UncertainParts parts, int[] relevant)
    {
        for (int corner = 0; corner < 1 << relevant.Length; corner++)
        {
            double[] x = (double[])parts.Expected.Clone();
            for (int i = 0; i < relevant.Length; i++)
            {
                UncertainRange range = parts.All[relevant[i]].Range;
                x[relevant[i]] = (corner & (1 << i)) == 0 ? range.Low : range.High;
            }

            yield return x;
        }
    }
}
