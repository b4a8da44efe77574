using System;
using UnitsNet;

namespace CamPower;

/// <summary>The temperatures that a condition assumes.</summary>
/// <remarks>Immutable. Each is finite and above absolute zero; whether a model is valid there is for the model to say.</remarks>
/// <example>
/// <code>
/// var winter = new Surroundings(cable: Temperature.FromDegreesCelsius(-10), box: Temperature.FromDegreesCelsius(5),
///     camera: Temperature.FromDegreesCelsius(-10));
/// </code>
/// </example>
public sealed class Surroundings
{
    internal const double AbsoluteZero = -273.15, Hottest = 1000;

    /// <summary>States the temperatures.</summary>
    /// <param name="cable">Temperature of the conductors, from absolute zero to 1000 °C.</param>
    /// <param name="box">Temperature of the air around the supplies, from absolute zero to 1000 °C.</param>
    /// <param name="camera">Temperature of the air around the devices, from absolute zero to 1000 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public Surroundings(Temperature cable, Temperature box, Temperature camera)
    {
        CableCelsius = Checked(cable, nameof(cable));
        BoxCelsius = Checked(box, nameof(box));
        Checked(camera, nameof(camera));
        Cable = cable;
        Box = box;
        Camera = camera;
    }

    /// <summary>Temperature of the conductors.</summary>
    public Temperature Cable { get; }

    /// <summary>Temperature of the air around the supplies.</summary>
    public Temperature Box { get; }

    /// <summary>Temperature of the air around the devices.</summary>
    public Temperature Camera { get; }

    internal double CableCelsius { get; }

    internal double BoxCelsius { get; }

    /// <summary>The three temperatures in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"cable {CableCelsius:G6} °C, box {BoxCelsius:G6} °C, camera {Celsius.Of(Camera):G6} °C");

    private static double Checked(Temperature temperature, string parameter) =>
        Require.Within(Celsius.Of(temperature), AbsoluteZero, Hottest, parameter, "°C");
}
