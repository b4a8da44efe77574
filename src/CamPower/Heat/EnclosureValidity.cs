using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Heat;

/// <summary>Where the model of a sealed enclosure was held against other figures, and where not.</summary>
internal static class EnclosureValidity
{
    private const double ZeroCelsius = -Surroundings.AbsoluteZero;

    internal static IEnumerable<ValidityBreach> Breaches(Enclosure enclosure, double ambientCelsius, double insideCelsius)
    {
        if (enclosure.IsVentilated)
        {
            yield return new ValidityBreach("vents or a fan: the model is for a sealed enclosure, which is hotter", Sources.EnclosureRange);
        }

        double shortest = Math.Min(enclosure.WidthMeters, Math.Min(enclosure.HeightMeters, enclosure.DepthMeters));
        double longest = Math.Max(enclosure.WidthMeters, Math.Max(enclosure.HeightMeters, enclosure.DepthMeters));
        double coldest = HeatConstants.ColdestAir.Value - ZeroCelsius, hottest = HeatConstants.HottestAir.Value - ZeroCelsius;
        if (Limits.IsBelow(shortest, HeatConstants.ShortestSide.Value))
        {
            yield return Side("shortest side of the enclosure", shortest, HeatConstants.ShortestSide);
        }

        if (Limits.IsAbove(longest, HeatConstants.LongestSide.Value))
        {
            yield return Side("longest side of the enclosure", longest, HeatConstants.LongestSide);
        }

        if (ambientCelsius < coldest) yield return Air("air around the enclosure", ambientCelsius, coldest, HeatConstants.ColdestAir);
        if (insideCelsius > hottest) yield return Air("air in the enclosure", insideCelsius, hottest, HeatConstants.HottestAir);
    }

    private static ValidityBreach Side(string what, double meters, CitedValue limit) =>
        new(what, limit.Source, Length.FromMeters(meters), Length.FromMeters(limit.Value));

    private static ValidityBreach Air(string what, double celsius, double limitCelsius, CitedValue limit) =>
        new(what, limit.Source, Temperature.FromDegreesCelsius(celsius), Temperature.FromDegreesCelsius(limitCelsius));
}
