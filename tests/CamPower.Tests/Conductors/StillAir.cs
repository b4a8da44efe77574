using System;

namespace CamPower.Tests.Conductors;

/// <summary>
/// What a wire carries alone in still air, from the physics of the air around it: the law of Churchill and Chu for a
/// horizontal cylinder (Int. J. Heat Mass Transfer 18, 1975, p. 1049), and radiation with an emissivity of 0.9. The air's
/// properties are power laws fitted to the table of Incropera and DeWitt between 250 K and 450 K, from memory. It knows nothing
/// of the library.
/// </summary>
internal static class StillAir
{
    /// <summary>Thermal resistance of a meter of cylinder to the air. [K·m/W]</summary>
    internal static double ThermalResistance(double diameter, double surface, double air)
    {
        double film = ((surface + air) / 2) + 273.15;
        double conductivity = 0.0241 * Math.Pow(film / 273.15, 0.81), viscosity = 1.32e-5 * Math.Pow(film / 273.15, 1.78);
        const double prandtl = 0.71;
        double rayleigh = 9.81 / film * (surface - air) * Math.Pow(diameter, 3) / (viscosity * viscosity) * prandtl;
        double root = 0.60 + (0.387 * Math.Pow(rayleigh, 1.0 / 6) / Math.Pow(1 + Math.Pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27));
        double convection = root * root * conductivity / diameter;
        double radiation = 0.9 * 5.670e-8 * (Fourth(surface) - Fourth(air)) / (surface - air);
        return 1 / (Math.PI * diameter * (convection + radiation));
    }

    /// <summary>The current that holds a copper wire of an insulation at a temperature. [A]</summary>
    internal static double Ampacity(double ohmsPerMeterHot, double outerDiameter, double hot, double air) =>
        Math.Sqrt((hot - air) / ThermalResistance(outerDiameter, hot, air) / ohmsPerMeterHot);

    private static double Fourth(double celsius) => Math.Pow(celsius + 273.15, 4);
}
