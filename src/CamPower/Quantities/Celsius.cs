using UnitsNet;
using UnitsNet.Units;

namespace CamPower;

/// <summary>Temperatures as plain degrees Celsius, the scale that the conductor tables use.</summary>
internal static class Celsius
{
    /// <summary>The temperature at which wire tables state resistance. [°C]</summary>
    internal const double Reference = 20;

    private const double ZeroInKelvins = 273.15, ZeroInFahrenheit = 32, FahrenheitPerKelvin = 1.8;

    /// <summary>Degrees Celsius, without the detour through kelvins, and its rounding, for the two scales in daily use.</summary>
    internal static double Of(Temperature temperature) => temperature.Unit switch
    {
        TemperatureUnit.DegreeCelsius => temperature.Value,
        TemperatureUnit.DegreeFahrenheit => (temperature.Value - ZeroInFahrenheit) / FahrenheitPerKelvin,
        _ => Converted(temperature),
    };

    // By value, so that the quantity that was asked about never needs an address.
    private static double Converted(Temperature temperature) => temperature.Kelvins - ZeroInKelvins;
}
