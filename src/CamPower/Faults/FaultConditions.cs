using System;
using UnitsNet;

namespace CamPower;

/// <summary>The temperatures between which a fault may happen, and how the cable lies.</summary>
/// <remarks>Immutable. Cold conductors let the most current flow, hot ones the least.</remarks>
/// <example>
/// <code>
/// var anyDay = new FaultConditions(coldest: Temperature.FromDegreesCelsius(-10), hottest: Temperature.FromDegreesCelsius(60),
///     deviceColdest: Temperature.FromDegreesCelsius(0), deviceHottest: Temperature.FromDegreesCelsius(50),
///     Laying.InCableOrRaceway(currentCarryingConductors: 2));
/// </code>
/// </example>
public sealed class FaultConditions
{
    /// <summary>States the temperatures, with one around the protective device.</summary>
    /// <param name="coldest">The coldest that the conductors are, from absolute zero to 1000 °C.</param>
    /// <param name="hottest">The hottest that they are, from <paramref name="coldest"/> to 1000 °C.</param>
    /// <param name="device">Temperature of the air around the protective device, from absolute zero to 1000 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    /// <remarks>Nobody says how the cable lies: of what lasts longer than 5 s little is then known.</remarks>
    public FaultConditions(Temperature coldest, Temperature hottest, Temperature device)
        : this(coldest, hottest, Checked(device, nameof(device)), device)
    {
    }

    /// <summary>States the temperatures, with a range around the protective device.</summary>
    /// <param name="coldest">The coldest that the conductors are, from absolute zero to 1000 °C.</param>
    /// <param name="hottest">The hottest that they are, from <paramref name="coldest"/> to 1000 °C.</param>
    /// <param name="deviceColdest">The coldest that the air around the protective device is, from absolute zero to 1000 °C.</param>
    /// <param name="deviceHottest">The hottest that it is, from <paramref name="deviceColdest"/> to 1000 °C.</param>
    /// <param name="laying">How the cable lies, for what lasts longer than 5 s; null where nobody says.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public FaultConditions(Temperature coldest, Temperature hottest, Temperature deviceColdest, Temperature deviceHottest, Laying? laying = null)
    {
        CheckOrder(Celsius.Of(Checked(coldest, nameof(coldest))), Celsius.Of(Checked(hottest, nameof(hottest))), nameof(hottest));
        CheckOrder(Celsius.Of(Checked(deviceColdest, nameof(deviceColdest))), Celsius.Of(Checked(deviceHottest, nameof(deviceHottest))), nameof(deviceHottest));
        Coldest = coldest;
        Hottest = hottest;
        DeviceColdest = deviceColdest;
        DeviceHottest = deviceHottest;
        Laying = laying;
    }

    /// <summary>The coldest that the conductors are.</summary>
    public Temperature Coldest { get; }

    /// <summary>The hottest that they are.</summary>
    public Temperature Hottest { get; }

    /// <summary>The coldest that the air around the protective device is.</summary>
    public Temperature DeviceColdest { get; }

    /// <summary>The hottest that it is.</summary>
    public Temperature DeviceHottest { get; }

    /// <summary>How the cable lies, or null where nobody says.</summary>
    public Laying? Laying { get; }

    /// <summary>The temperatures in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"conductors from {Celsius.Of(Coldest):G6} °C to {Celsius.Of(Hottest):G6} °C, device from {Celsius.Of(DeviceColdest):G6} °C to {Celsius.Of(DeviceHottest):G6} °C");

    private static Temperature Checked(Temperature temperature, string parameter)
    {
        Require.Within(Celsius.Of(temperature), Surroundings.AbsoluteZero, Surroundings.Hottest, parameter, "°C");
        return temperature;
    }

    private static void CheckOrder(double cold, double hot, string parameter)
    {
        if (hot < cold) throw Require.OutOfRange(hot, parameter, "°C", FormattableString.Invariant($"at least {cold}"));
    }
}
