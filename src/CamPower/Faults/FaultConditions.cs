using System;
using UnitsNet;

namespace CamPower;

/// <summary>The temperatures of one condition in which a fault may happen: of the conductors, and around the protective device.</summary>
/// <remarks>Immutable. Seasons do not mix: cold conductors and a cold box belong to one condition, hot ones to another.</remarks>
/// <example>
/// <code>
/// var winter = new FaultConditions(conductors: Temperature.FromDegreesCelsius(-10), device: Temperature.FromDegreesCelsius(0));
/// var summer = new FaultConditions(conductors: Temperature.FromDegreesCelsius(60), device: Temperature.FromDegreesCelsius(50));
/// </code>
/// </example>
public sealed class FaultConditions
{
    /// <summary>States the temperatures.</summary>
    /// <param name="conductors">Temperature of the conductors, and of the air around them, from absolute zero to 1000 °C.</param>
    /// <param name="device">Temperature of the air around the protective device, from absolute zero to 1000 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public FaultConditions(Temperature conductors, Temperature device)
    {
        Require.Within(Celsius.Of(conductors), Surroundings.AbsoluteZero, Surroundings.Hottest, nameof(conductors), "°C");
        Require.Within(Celsius.Of(device), Surroundings.AbsoluteZero, Surroundings.Hottest, nameof(device), "°C");
        Conductors = conductors;
        Device = device;
    }

    /// <summary>Temperature of the conductors, and of the air around them.</summary>
    public Temperature Conductors { get; }

    /// <summary>Temperature of the air around the protective device.</summary>
    public Temperature Device { get; }

    /// <summary>The temperatures in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"conductors at {Celsius.Of(Conductors):G6} °C, device at {Celsius.Of(Device):G6} °C");
}
