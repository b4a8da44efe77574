using System;
using UnitsNet;

namespace CamPower;

/// <summary>The temperatures between which a fault may happen.</summary>
/// <remarks>Immutable. Cold conductors let the most current flow, hot ones the least.</remarks>
/// <example>
/// <code>
/// var anyDay = new FaultConditions(coldest: Temperature.FromDegreesCelsius(-10), hottest: Temperature.FromDegreesCelsius(60),
///     device: Temperature.FromDegreesCelsius(40));
/// </code>
/// </example>
public sealed class FaultConditions
{
    /// <summary>States the temperatures.</summary>
    /// <param name="coldest">The coldest that the conductors are, from absolute zero to 1000 °C.</param>
    /// <param name="hottest">The hottest that they are, from <paramref name="coldest"/> to 1000 °C.</param>
    /// <param name="device">Temperature of the air around the protective device, from absolute zero to 1000 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public FaultConditions(Temperature coldest, Temperature hottest, Temperature device)
    {
        double cold = Checked(coldest, nameof(coldest)), hot = Checked(hottest, nameof(hottest));
        if (hot < cold) throw Require.OutOfRange(hot, nameof(hottest), "°C", FormattableString.Invariant($"at least {cold}"));
        Checked(device, nameof(device));
        Coldest = coldest;
        Hottest = hottest;
        Device = device;
    }

    /// <summary>The coldest that the conductors are.</summary>
    public Temperature Coldest { get; }

    /// <summary>The hottest that they are.</summary>
    public Temperature Hottest { get; }

    /// <summary>Temperature of the air around the protective device.</summary>
    public Temperature Device { get; }

    /// <summary>The three temperatures in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"conductors from {Celsius.Of(Coldest):G6} °C to {Celsius.Of(Hottest):G6} °C, device at {Celsius.Of(Device):G6} °C");

    private static double Checked(Temperature temperature, string parameter) =>
        Require.Within(Celsius.Of(temperature), Surroundings.AbsoluteZero, Surroundings.Hottest, parameter, "°C");
}
