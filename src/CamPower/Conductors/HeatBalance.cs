using System;

namespace CamPower.Conductors;

/// <summary>A meter of wire that a steady current warms: C·dT/dt = I²·r(T) − (T − Ta)/θ, linear in T and so solved exactly. SI
/// doubles.</summary>
/// <remarks>
/// From T₀ on it is T₀ + g·(1 − e^(−λt))/λ, where g is the rate at T₀ and λ = (1/θ − I²·r₂₀·α)/C. With λ at or below zero it
/// runs away: the warmer wire makes more heat than it gets rid of. An infinite θ is adiabatic. C is that of the metal
/// alone: the insulation's own only makes it slower. Source: <see cref="Sources.LumpedHeatCapacity"/>.
/// </remarks>
internal readonly struct HeatBalance
{
    private readonly double _airCelsius, _conductance, _capacity, _wattsAt20C, _wattsPerKelvin;

    /// <param name="wire">The wire; of several in parallel, one.</param>
    /// <param name="theta">Thermal resistance of a meter of it to the air. [K·m/W]</param>
    /// <param name="airCelsius">Temperature of the air. [°C]</param>
    /// <param name="amperes">Current in one wire, RMS. [A]</param>
    internal HeatBalance(Conductor wire, double theta, double airCelsius, double amperes)
    {
        ConductorMaterial material = wire.Material;
        _airCelsius = airCelsius;
        _conductance = 1 / theta;
        _capacity = wire.Size.SquareMeters * material.JoulesPerCubicMeterKelvin;
        _wattsAt20C = amperes * amperes * wire.OhmsPerMeterAt20C * wire.Count;
        _wattsPerKelvin = _wattsAt20C * material.TemperatureCoefficientAt20C;
    }

    /// <summary>Whether density and specific heat of the metal are known; without them there is no time in the balance.</summary>
    internal bool HasCapacity => !double.IsNaN(_capacity);

    /// <summary>Rate at which a difference dies away; at or below zero it grows. [1/s]</summary>
    internal double Decay => (_conductance - _wattsPerKelvin) / _capacity;

    /// <summary>Where it settles; infinite where it does not. [°C]</summary>
    internal double SteadyCelsius => _conductance > _wattsPerKelvin
        ? _airCelsius + (WattsAt(_airCelsius) / (_conductance - _wattsPerKelvin))
        : double.PositiveInfinity;

    /// <summary>Its temperature when it has begun at one, not below the air's. [°C]</summary>
    internal double CelsiusAfter(double seconds, double from)
    {
        if (double.IsInfinity(seconds)) return SteadyCelsius;
        double exponent = Decay * seconds;
        double share = Math.Abs(exponent) < 1e-5 ? 1 - (exponent / 2) : (1 - Math.Exp(-exponent)) / exponent;
        return from + (RateAt(from) * seconds * share);
    }

    /// <summary>When it reaches a limit; infinite where it never does. [s]</summary>
    internal double SecondsTo(double limit, double from)
    {
        if (limit <= from) return 0;
        double rate = RateAt(from);
        if (!(rate > 0)) return double.PositiveInfinity;
        double share = Decay * (limit - from) / rate;
        if (share >= 1) return double.PositiveInfinity;
        double stretch = Math.Abs(share) < 1e-5 ? 1 + (share / 2) : -Math.Log(1 - share) / share;
        return (limit - from) / rate * stretch;
    }

    private double WattsAt(double celsius) => _wattsAt20C + (_wattsPerKelvin * (celsius - Celsius.Reference));

    private double RateAt(double celsius) => (WattsAt(celsius) - ((celsius - _airCelsius) * _conductance)) / _capacity;
}
