using System;
using UnitsNet;

namespace CamPower;

/// <summary>The temperatures and the sunlight that a condition assumes.</summary>
/// <remarks>Immutable. Each temperature is finite and above absolute zero; whether a model is valid there is for the model to
/// say.</remarks>
/// <example>
/// <code>
/// var winter = new Surroundings(cable: Temperature.FromDegreesCelsius(-10), box: Temperature.FromDegreesCelsius(5),
///     camera: Temperature.FromDegreesCelsius(-10));
/// </code>
/// </example>
public sealed class Surroundings
{
    internal const double AbsoluteZero = -273.15, Hottest = 1000;

    private const double StrongestSun = 2000;

    /// <summary>States the temperatures.</summary>
    /// <param name="cable">Temperature of the conductors, from absolute zero to 1000 °C.</param>
    /// <param name="box">Temperature of the air around the boxes, from absolute zero to 1000 °C; see <see cref="Box"/>.</param>
    /// <param name="camera">Temperature of the air around the devices, from absolute zero to 1000 °C.</param>
    /// <param name="sun">Sunlight on what is not in the shade, square to the light, from 0 to 2000 W/m²; null for none. [W/m²]</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Surroundings(Temperature cable, Temperature box, Temperature camera, Irradiance? sun = null)
    {
        CableCelsius = Checked(cable, nameof(cable));
        BoxCelsius = Checked(box, nameof(box));
        CameraCelsius = Checked(camera, nameof(camera));
        SunWattsPerSquareMeter = Require.Within((sun ?? Irradiance.Zero).WattsPerSquareMeter, 0, StrongestSun, nameof(sun), "W/m²");
        Cable = cable;
        Box = box;
        Camera = camera;
        Sun = sun;
    }

    /// <summary>Temperature of the conductors.</summary>
    public Temperature Cable { get; }

    /// <summary>Temperature of the air around the boxes: around the supply itself where its box declares no enclosure.</summary>
    /// <remarks>Where it declares one, the air inside it is warmer than this.</remarks>
    public Temperature Box { get; }

    /// <summary>Temperature of the air around the devices.</summary>
    public Temperature Camera { get; }

    /// <summary>Sunlight on what is not in the shade, square to the light, or null. [W/m²]</summary>
    public Irradiance? Sun { get; }

    internal double CableCelsius { get; }

    internal double BoxCelsius { get; }

    internal double CameraCelsius { get; }

    /// <summary>The same with other air around the boxes. [°C]</summary>
    internal Surroundings WithBoxAt(double celsius) => new(Cable, Temperature.FromDegreesCelsius(celsius), Camera, Sun);

    internal double SunWattsPerSquareMeter { get; }

    /// <summary>The three temperatures, and the sunlight where there is any, in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        string sun = Sun is null ? string.Empty : FormattableString.Invariant($", sun {SunWattsPerSquareMeter:G6} W/m²");
        return FormattableString.Invariant($"cable {CableCelsius:G6} °C, box {BoxCelsius:G6} °C, camera {CameraCelsius:G6} °C") + sun;
    }

    private static double Checked(Temperature temperature, string parameter) =>
        Require.Within(Celsius.Of(temperature), AbsoluteZero, Hottest, parameter, "°C");
}
