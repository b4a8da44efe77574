using System;
using CamPower.Heat;
using UnitsNet;

namespace CamPower;

/// <summary>How warm an enclosure gets.</summary>
public static class EnclosureHeating
{
    private const double MostWatts = 1e15, StrongestSun = 2000;

    /// <summary>The steady temperatures of a sealed enclosure with heat lost in it, in still air.</summary>
    /// <param name="enclosure">The enclosure. <see cref="Enclosure.OtherHeat"/> is not added here: it belongs to <paramref name="losses"/>.</param>
    /// <param name="losses">All the heat lost in it, from 0 to 10¹⁵ W. [W]</param>
    /// <param name="ambient">Temperature of the air around it, from absolute zero to 1000 °C.</param>
    /// <param name="sun">Sunlight on <see cref="Enclosure.SunlitArea"/>, square to the light, from 0 to 2000 W/m²; null for none. [W/m²]</param>
    /// <param name="altitude">Height above the sea, from -500 m to 9000 m; null for sea level. [m]</param>
    /// <exception cref="ArgumentNullException"><paramref name="enclosure"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <remarks>Outside the range of the model there is an answer too, and it says so: <see cref="HeatedEnclosure.Breaches"/>.</remarks>
    /// <example>
    /// <code>
    /// HeatedEnclosure noon = enclosure.HeatedBy(Power.FromWatts(30), Temperature.FromDegreesCelsius(35), sun: Irradiance.FromWattsPerSquareMeter(1120));
    /// </code>
    /// </example>
    public static HeatedEnclosure HeatedBy(this Enclosure enclosure, Power losses, Temperature ambient, Irradiance? sun = null,
        Length? altitude = null) => new(
        Require.NotNull(enclosure, nameof(enclosure)),
        Require.Within((double)losses.Watts, 0, MostWatts, nameof(losses), "W"),
        Require.Within(Celsius.Of(ambient), Surroundings.AbsoluteZero, Surroundings.Hottest, nameof(ambient), "°C"),
        Require.Within((sun ?? Irradiance.Zero).WattsPerSquareMeter, 0, StrongestSun, nameof(sun), "W/m²"),
        altitude is Length height ? AltitudeDerating.MetersOf(height, nameof(altitude)) : 0);
}
