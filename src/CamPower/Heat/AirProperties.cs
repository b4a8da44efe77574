using System;

namespace CamPower.Heat;

/// <summary>Dry air at sea level, as natural convection sees it.</summary>
/// <remarks>Source: <see cref="Sources.AirTransport"/>; density by the law of ideal gases.</remarks>
internal readonly struct AirProperties
{
    internal AirProperties(double kelvins)
    {
        double viscosity = Sutherland(HeatConstants.AirViscosity.Value, HeatConstants.AirViscositySutherland.Value, kelvins);
        double density = HeatConstants.Pressure.Value / (HeatConstants.AirGasConstant.Value * kelvins);
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

    private static double Sutherland(double atReference, double sutherland, double kelvins)
    {
        double ratio = kelvins / HeatConstants.AirReference.Value;
        return atReference * ratio * Math.Sqrt(ratio) * (HeatConstants.AirReference.Value + sutherland) / (kelvins + sutherland);
    }
}
