using System;

namespace CamPower.Circuits;

/// <summary>One thing across the terminals of a device on alternating current: a rectifier with its capacitor, or something linear that
/// takes current in phase and lagging. SI doubles.</summary>
internal sealed class AlternatingElement
{
    private readonly Load _load;

    private AlternatingElement(int device, Load load)
    {
        Device = device;
        _load = load;
    }

    /// <summary>The place of its device.</summary>
    internal int Device { get; }

    /// <summary>How many diodes are in the way of its current: 0 for a linear one, 1 for half-wave, 2 for full-wave.</summary>
    internal int Diodes { get; private init; }

    /// <summary>Whether it takes the negative half-waves alone.</summary>
    internal bool IsReversed { get; private init; }

    /// <summary>Its capacitor. [F]</summary>
    internal double Farads { get; private init; }

    /// <summary>The lagging current over the one in phase. [1]</summary>
    internal double Lag { get; private init; }

    /// <summary>A bridge of four diodes and a capacitor, or one diode and a capacitor, with a load behind it.</summary>
    internal static AlternatingElement Rectifier(int device, Load load, double farads, bool isHalfWave, bool isReversed = false) =>
        new(device, load) { Diodes = isHalfWave ? 1 : 2, IsReversed = isHalfWave && isReversed, Farads = farads };

    /// <summary>A linear load that keeps its power, its current or its resistance at every RMS voltage, and its displacement.</summary>
    internal static AlternatingElement Linear(int device, Load load, double powerFactor = 1) =>
        new(device, load) { Lag = Math.Sqrt(1 - (powerFactor * powerFactor)) / powerFactor };

    /// <summary>The current in phase that it takes at a voltage, RMS; that behind the rectifier at the voltage of its capacitor.
    /// [A]</summary>
    internal double AmperesAt(double volts) => _load.AmperesAt(volts);

    /// <summary>dI/dV there. [S]</summary>
    internal double SlopeAt(double volts) => _load.SlopeAt(volts);
}
