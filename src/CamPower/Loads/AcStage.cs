using System;
using UnitsNet;

namespace CamPower;

/// <summary>What is behind the input terminals of a device on alternating current: it decides which current its power takes.</summary>
/// <remarks>
/// Immutable. A rectifier charges its capacitor at the crest, in short pulses: their RMS is well above what the power alone would take.
/// The power and the current of a device's draw are then those behind the rectifier, a resistance of its draw is a heater before it, and
/// its turn-on and drop-out voltages are direct voltages of the capacitor.
/// </remarks>
/// <example>
/// <code>
/// AcStage stage = AcStage.FullWave(capacitance: ElectricCapacitance.FromMicrofarads(470));
/// </code>
/// </example>
public sealed class AcStage
{
    private AcStage(int diodes, Ratio? powerFactor, ElectricCapacitance? capacitance)
    {
        Diodes = diodes;
        PowerFactor = powerFactor;
        Factor = powerFactor?.DecimalFractions ?? 0;
        Capacitance = capacitance;
    }

    /// <summary>A resistor: current in phase with the voltage, and of its form.</summary>
    public static AcStage Resistive { get; } = new(0, Ratio.FromPercent(100), null);

    /// <summary>Whether it has a rectifier with a capacitor.</summary>
    public bool IsRectifier => Diodes > 0;

    /// <summary>Whether that rectifier is one diode, which takes current in one half of each period alone. Its negative is one of its two
    /// input terminals.</summary>
    public bool IsHalfWave => Diodes == 1;

    /// <summary>The share of its apparent power that is power, of a linear input; null for a rectifier, whose current decides it.
    /// [1]</summary>
    public Ratio? PowerFactor { get; }

    /// <summary>Capacitance behind the rectifier; null where it is not stated, and without a rectifier. [F]</summary>
    public ElectricCapacitance? Capacitance { get; }

    internal int Diodes { get; }

    internal double Factor { get; }

    /// <summary>A linear input whose current lags behind the voltage.</summary>
    /// <param name="powerFactor">Cosine of the angle between them, from 0.05 to 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="powerFactor"/> is outside that range.</exception>
    /// <example><code>AcStage stage = AcStage.Lagging(Ratio.FromDecimalFractions(0.8));</code></example>
    public static AcStage Lagging(Ratio powerFactor)
    {
        Require.Within(powerFactor.DecimalFractions, 0.05, 1, nameof(powerFactor), "");
        return new(0, powerFactor, null);
    }

    /// <summary>A bridge of four diodes and a capacitor.</summary>
    /// <param name="capacitance">Capacitance behind it, from 1 nF to 10 F; null where it is not stated. [F]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="capacitance"/> is outside that range.</exception>
    public static AcStage FullWave(ElectricCapacitance? capacitance = null) => new(2, null, Checked(capacitance));

    /// <summary>One diode and a capacitor.</summary>
    /// <param name="capacitance">Capacitance behind it, from 1 nF to 10 F; null where it is not stated. [F]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="capacitance"/> is outside that range.</exception>
    public static AcStage HalfWave(ElectricCapacitance? capacitance = null) => new(1, null, Checked(capacitance));

    /// <summary>The stage in words, in the invariant culture; never throws.</summary>
    public override string ToString() => IsRectifier
        ? FormattableString.Invariant($"{(IsHalfWave ? "half" : "full")}-wave rectifier, {Size}")
        : FormattableString.Invariant($"power factor {Factor:G4}");

    private string Size => Capacitance is ElectricCapacitance size
        ? FormattableString.Invariant($"{size.Microfarads:G4} µF")
        : "capacitance not stated";

    private static ElectricCapacitance? Checked(ElectricCapacitance? capacitance)
    {
        if (capacitance is ElectricCapacitance size) Require.Within(size.Farads, 1e-9, 10, nameof(capacitance), "F");
        return capacitance;
    }
}
