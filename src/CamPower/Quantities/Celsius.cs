using UnitsNet;
using UnitsNet.Units;

namespace CamPower;

/// <summary>Temperatures as plain degrees Celsius, the scale that the conductor tables use.</summary>
internal static class Celsius
{
    /// <summary>The temperature at which wire tables state resistance. [°C]</summary>
    internal const double Reference = 20;

    // A limit read in another unit and handed back comes back rounded, through kelvins, by some 1e-13 K.
    private const double Rounding = 1e-9;

    private const double ZeroInKelvins = 273.15, ZeroInFahrenheit = 32, FahrenheitPerKelvin = 1.8;

    /// <summary>Degrees Celsius, without the detour through kelvins, and its rounding, for the two scales in daily use.</summary>
    internal static double Of(Temperature temperature) => temperature.Unit switch
    {
        TemperatureUnit.DegreeCelsius => temperature.Value,
        TemperatureUnit.DegreeFahrenheit => (temperature.Value - ZeroInFahrenheit) / FahrenheitPerKelvin,
        _ => Converted(temperature),
    };

    /// <summary>Degrees Celsius, refused outside a range; beyond its end by no more than rounding is its end.</summary>
    internal static double Within(Temperature temperature, double low, double high, string parameter)
    {
        double celsius = Of(temperature);
        if (celsius < low && celsius >= low - Rounding) return low;
        if (celsius > high && celsius <= high + Rounding) return high;
        return Require.Within(celsius, low, high, parameter, "°C");
    }

    // By value, so that the quantity that was asked about never needs an address.
    private static double Converted(Temperature temperature) => temperature.Kelvins - ZeroInKelvins;
}
