using System;

namespace CamPower.Heat;

/// <summary>Film coefficients of natural convection from plates. [W/(m²·K)]</summary>
internal static class Convection
{
    /// <summary>A vertical plate of a height. Source: <see cref="Sources.VerticalPlate"/>.</summary>
    /// <remarks>The larger of the laminar and the turbulent law, so that there is no step from one to the other.</remarks>
    internal static double Vertical(AirProperties air, double rise, double height)
    {
        double rayleigh = air.Rayleigh(rise, height);
        double hindered = Math.Pow(1 + Math.Pow(0.492 / air.Prandtl, 9.0 / 16), 4.0 / 9);
        double laminar = 0.68 + (0.670 * Math.Sqrt(Math.Sqrt(rayleigh)) / hindered);
        return Math.Max(laminar, 0.10 * Math.Pow(rayleigh, 1.0 / 3)) * air.Conductivity / height;
    }

    /// <summary>A plate with its warm side up, or its cool side down. Source: <see cref="Sources.HorizontalPlate"/>.</summary>
    /// <remarks>The larger of the two laws, as for a vertical plate.</remarks>
    internal static double WarmSideUp(AirProperties air, double rise, double length)
    {
        double rayleigh = air.Rayleigh(rise, length);
        return Math.Max(0.54 * Math.Sqrt(Math.Sqrt(rayleigh)), 0.15 * Math.Pow(rayleigh, 1.0 / 3)) * air.Conductivity / length;
    }

    /// <summary>A plate with its warm side down, or its cool side up. Source: <see cref="Sources.HorizontalPlate"/>.</summary>
    internal static double WarmSideDown(AirProperties air, double rise, double length) =>
        0.27 * Math.Sqrt(Math.Sqrt(air.Rayleigh(rise, length))) * air.Conductivity / length;
}
