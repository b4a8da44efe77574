using System;
using UnitsNet;

namespace CamPower;

/// <summary>The shield of a video cable, from the negative terminal of a device to the ground where shields meet.</summary>
/// <remarks>
/// Immutable. Only for a device whose power negative and video ground are one: an isolated input has no link. Part of
/// the return current takes this way, and the voltage along it is in series with the picture.
/// </remarks>
/// <example>
/// <code>
/// var link = new VideoLink(device: "slipway camera", ground: "recorder", ElectricResistance.FromOhms(0.9));
/// </code>
/// </example>
public sealed class VideoLink
{
    /// <summary>Places a shield.</summary>
    /// <param name="device">Name of the device. Not empty.</param>
    /// <param name="ground">Name of the ground where its shield meets others: the recorder's, say. Not empty.</param>
    /// <param name="shieldResistance">Resistance of the shield from end to end, connectors included, from 1 µΩ to 100 MΩ. [Ω]</param>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="shieldResistance"/> is outside its range.</exception>
    public VideoLink(string device, string ground, ElectricResistance shieldResistance)
    {
        Device = Require.Name(device, nameof(device));
        Ground = Require.Name(ground, nameof(ground));
        Require.Within(shieldResistance.Ohms, 1e-6, 1e8, nameof(shieldResistance), "Ω");
        ShieldResistance = shieldResistance;
    }

    /// <summary>Name of the device.</summary>
    public string Device { get; }

    /// <summary>Name of the ground where its shield meets others.</summary>
    public string Ground { get; }

    /// <summary>Resistance of the shield from end to end.</summary>
    public ElectricResistance ShieldResistance { get; }

    /// <summary>Both ends in words; never throws.</summary>
    public override string ToString() => $"shield from {Device} to {Ground}";
}
