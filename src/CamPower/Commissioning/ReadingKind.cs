namespace CamPower.Commissioning;

/// <summary>What a reading is of, and so where the leads of the meter are.</summary>
public enum ReadingKind
{
    /// <summary>The voltage at the terminals of a supply, before any protective device. [V]</summary>
    SupplyVoltage,

    /// <summary>The voltage at an output of a box, behind its protective device. [V]</summary>
    OutputVoltage,

    /// <summary>The current of an output. [A]</summary>
    OutputCurrent,

    /// <summary>The voltage at the plug of a device; negative where its leads are reversed. [V]</summary>
    PlugVoltage,

    /// <summary>The voltage at a junction. [V]</summary>
    JunctionVoltage,

    /// <summary>The resistance between the two wires of an output, taken off its terminals. [Ω]</summary>
    PairResistance,

    /// <summary>The resistance of the same two wires with the plug of a device jumpered: out to it and back. [Ω]</summary>
    LoopResistance,

    /// <summary>The resistance of the same two wires with a junction jumpered: out to it and back. [Ω]</summary>
    JunctionLoopResistance,
}
