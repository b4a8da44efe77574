using System;

namespace CamPower.Heat;

/// <summary>Dry air, as natural convection sees it.</summary>
/// <remarks>Source: <see cref="Sources.AirTransport"/>; density by the law of ideal gases.</remarks>
internal readonly struct AirProperties
{
    // The standard atmosphere: from 288.15 K at sea level 6.5 K cooler with every kilometer.
    private const double AtSeaLevel = 288.15, KelvinsPerMeter = 0.0065;

    internal AirProperties(double kelvins, double altitudeMeters)
    {
        double viscosity = Sutherland(HeatConstants.AirViscosity.Value, HeatConstants.AirViscositySutherland.Value, kelvins);
        double density = PressureAt(altitudeMeters) / (HeatConstants.AirGasConstant.Value * kelvins);
        Conductivity = Sutherland(HeatConstants.AirConductivity.Value, HeatConstants.AirConductivitySutherland.Value, kelvins);
        KinematicViscosity = viscosity / density;
        Diffusivity = Conductivity / (density * HeatConstants.AirSpecificHeat.Value);
        Kelvins = kelvins;
    }

    internal double Kelvins { get; }

    /// <summary>Thermal conductivity. [W/(m·K)]</summary>
    internal double Conductivity { get; }

    /// <summary>Viscosity over density. [m²/s]</summary>
    internal double KinematicViscosity { get; }

    /// <summary>Thermal diffusivity. [m²/s]</summary>
    internal double Diffusivity { get; }

    /// <summary>Prandtl's number. [1]</summary>
    internal double Prandtl => KinematicViscosity / Diffusivity;

    /// <summary>Rayleigh's number of a plate that is warmer, or cooler, than the air, with β = 1/T. [1]</summary>
    internal double Rayleigh(double rise, double meters) =>
        HeatConstants.Gravity.Value * rise * meters * meters * meters / (Kelvins * KinematicViscosity * Diffusivity);

    // Source: Sources.StandardAtmosphere.
    private static double PressureAt(double altitudeMeters) => HeatConstants.Pressure.Value
        * Math.Pow(1 - (KelvinsPerMeter * altitudeMeters / AtSeaLevel),
            HeatConstants.Gravity.Value / (HeatConstants.AirGasConstant.Value * KelvinsPerMeter));

    private static double Sutherland(double atReference, double sutherland, double kelvins)
    {
        double ratio = kelvins / HeatConstants.AirReference.Value;
        return atReference * ratio * Math.Sqrt(ratio) * (HeatConstants.AirReference.Value + sutherland) / (kelvins + sutherland);
    }
}
