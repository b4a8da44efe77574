using UnitsNet;
using UnitsNet.Units;

namespace CamPower;

/// <summary>Temperatures as plain degrees Celsius, the scale that the conductor tables use.</summary>
internal static class Celsius
{
    /// <summary>The temperature at which wire tables state resistance. [°C]</summary>
    internal const double Reference = 20;

    private const double ZeroInKelvins = 273.15;

    /// <summary>Degrees Celsius, exact for a temperature given in them, and without the allocation of a unit-to-unit conversion.</summary>
    internal static double Of(Temperature temperature) => temperature.Unit == TemperatureUnit.DegreeCelsius
        ? temperature.Value
        : temperature.Kelvins - ZeroInKelvins;
}
