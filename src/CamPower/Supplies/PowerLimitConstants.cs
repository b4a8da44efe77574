namespace CamPower.Supplies;

/// <summary>The figures of the tables of power limits, each with where it was seen.</summary>
internal static class PowerLimitConstants
{
    /// <summary>End of the lowest band of voltage of a limited power source. [V]</summary>
    internal static CitedValue LimitedPowerLowBand { get; } =
        new("Limited power source: lowest band up to", 20, "V", Sources.LimitedPower);

    /// <summary>End of its middle band, and of all alternating voltage. [V]</summary>
    internal static CitedValue LimitedPowerMiddleBand { get; } =
        new("Limited power source: middle band up to", 30, "V", Sources.LimitedPower);

    /// <summary>End of its highest band, of direct voltage alone. [V]</summary>
    internal static CitedValue LimitedPowerHighBand { get; } =
        new("Limited power source: highest band, direct voltage only, up to", 60, "V", Sources.LimitedPower);

    /// <summary>Peak of a direct voltage with more than 10 % ripple. [V]</summary>
    internal static CitedValue LimitedPowerPeak { get; } =
        new("Limited power source: peak voltage with more than 10 % ripple", 42.4, "V", Sources.LimitedPower);

    /// <summary>Current of an inherently limited source up to 30 V. [A]</summary>
    internal static CitedValue LimitedPowerCurrent { get; } =
        new("Limited power source, inherently limited: current up to 30 V", 8, "A", Sources.LimitedPower);

    /// <summary>Current times voltage of an inherently limited source above 30 V. [A·V]</summary>
    internal static CitedValue LimitedPowerHighCurrent { get; } =
        new("Limited power source, inherently limited: current × voltage above 30 V", 150, "A·V", Sources.LimitedPower);

    /// <summary>Apparent power over voltage of an inherently limited source up to 20 V. [VA/V]</summary>
    internal static CitedValue LimitedPowerPerVolt { get; } =
        new("Limited power source, inherently limited: apparent power over voltage up to 20 V", 5, "VA/V", Sources.LimitedPower);

    /// <summary>Apparent power of an inherently limited source of IEC 62368-1, at every voltage. [VA]</summary>
    internal static CitedValue LimitedPowerIec62368Most { get; } =
        new("Limited power source of IEC 62368-1, inherently limited: apparent power", 100, "VA", Sources.LimitedPowerIec62368);

    /// <summary>Current of an inherently limited source of IEC 62368-1 up to 30 V. [A]</summary>
    internal static CitedValue LimitedPowerIec62368Current { get; } =
        new("Limited power source of IEC 62368-1, inherently limited: current up to 30 V", 8, "A", Sources.LimitedPowerIec62368);

    /// <summary>Apparent power of an inherently limited source above 20 V. [VA]</summary>
    internal static CitedValue LimitedPowerMost { get; } =
        new("Limited power source, inherently limited: apparent power above 20 V", 100, "VA", Sources.LimitedPower);

    /// <summary>Current times voltage of a source with an overcurrent device. [A·V]</summary>
    internal static CitedValue LimitedPowerBypassedCurrent { get; } =
        new("Limited power source with an overcurrent device: current × voltage, the device bypassed", 1000, "A·V", Sources.LimitedPower);

    /// <summary>Apparent power of a source with an overcurrent device. [VA]</summary>
    internal static CitedValue LimitedPowerBypassedPower { get; } =
        new("Limited power source with an overcurrent device: apparent power, the device bypassed", 250, "VA", Sources.LimitedPower);

    /// <summary>Rated current of the overcurrent device up to 20 V. [A]</summary>
    internal static CitedValue LimitedPowerDevice { get; } =
        new("Limited power source: rating of the overcurrent device up to 20 V", 5, "A", Sources.LimitedPower);

    /// <summary>Rated current of the overcurrent device times voltage above 20 V. [A·V]</summary>
    internal static CitedValue LimitedPowerHighDevice { get; } =
        new("Limited power source: rating of the overcurrent device × voltage above 20 V", 100, "A·V", Sources.LimitedPowerFromMemory);

    /// <summary>Current at which the overcurrent device must open in time, over its limit in the table. [%]</summary>
    internal static CitedValue LimitedPowerOpeningCurrent { get; } =
        new("Limited power source: current at which the overcurrent device opens in time, over the limit of its rating", 210, "%",
            Sources.LimitedPowerOpening);

    /// <summary>The longest that the overcurrent device may take to open at that current. [s]</summary>
    internal static CitedValue LimitedPowerOpeningTime { get; } =
        new("Limited power source: longest time until the overcurrent device opens at that current", 120, "s", Sources.LimitedPowerOpening);

    /// <summary>The soonest that current and power are measured after the load is connected. [s]</summary>
    internal static CitedValue EarliestMeasurement { get; } =
        new("Soonest measurement of current and power: 5 s or 60 s by edition and way of limiting", 5, "s", Sources.LimitedPowerTime);

    /// <summary>Ripple up to which a direct voltage counts as free of it, RMS over the voltage. [%]</summary>
    internal static CitedValue RippleFree { get; } =
        new("Ripple up to which a direct voltage counts as free of it", 10, "%", Sources.LimitedPower);

    /// <summary>End of the lowest band of voltage of a Class 2 source. [V]</summary>
    internal static CitedValue Class2LowBand { get; } =
        new("Class 2: lowest band up to", 20, "V", Sources.Class2FromMemory);

    /// <summary>End of its middle band. [V]</summary>
    internal static CitedValue Class2MiddleBand { get; } =
        new("Class 2: middle band up to", 30, "V", Sources.Class2);

    /// <summary>End of its band of higher direct voltage. [V]</summary>
    internal static CitedValue Class2HighBand { get; } =
        new("Class 2: band of higher direct voltage up to", 60, "V", Sources.Class2FromMemory);

    /// <summary>End of the band of a few milliamperes. [V]</summary>
    internal static CitedValue Class2SmallCurrentBand { get; } =
        new("Class 2, inherently limited: band of a few milliamperes up to", 150, "V", Sources.Class2);

    /// <summary>Current of an inherently limited source up to 30 V. [A]</summary>
    internal static CitedValue Class2Current { get; } =
        new("Class 2, inherently limited: current up to 30 V", 8, "A", Sources.Class2FromMemory);

    /// <summary>Current times voltage of an inherently limited direct source above 30 V. [A·V]</summary>
    internal static CitedValue Class2HighCurrent { get; } =
        new("Class 2, inherently limited, direct current: current × voltage above 30 V", 150, "A·V", Sources.Class2FromMemory);

    /// <summary>Current in the band of a few milliamperes. [A]</summary>
    internal static CitedValue Class2SmallCurrent { get; } =
        new("Class 2, inherently limited: current in the highest band", 0.005, "A", Sources.Class2);

    /// <summary>Nameplate apparent power over voltage up to 20 V. [VA/V]</summary>
    internal static CitedValue Class2NameplatePerVolt { get; } =
        new("Class 2: nameplate apparent power over voltage up to 20 V", 5, "VA/V", Sources.Class2FromMemory);

    /// <summary>Nameplate apparent power of an inherently limited source from 20 V to 30 V. [VA]</summary>
    internal static CitedValue Class2Nameplate { get; } =
        new("Class 2: nameplate apparent power above 20 V, to 30 V", 100, "VA", Sources.Class2);

    /// <summary>Nameplate apparent power elsewhere above 20 V. [VA]</summary>
    internal static CitedValue Class2OtherNameplate { get; } =
        new("Class 2: nameplate apparent power above 30 V, and with an overcurrent device above 20 V", 100, "VA", Sources.Class2FromMemory);

    /// <summary>Current times voltage of a source with an overcurrent device. [A·V]</summary>
    internal static CitedValue Class2BypassedCurrent { get; } =
        new("Class 2 with an overcurrent device: current × voltage, the device bypassed", 1000, "A·V", Sources.Class2FromMemory);

    /// <summary>Apparent power of a source with an overcurrent device. [VA]</summary>
    internal static CitedValue Class2BypassedPower { get; } =
        new("Class 2 with an overcurrent device: apparent power, the device bypassed", 250, "VA", Sources.Class2FromMemory);

    /// <summary>Voltage up to which a transformer with an overcurrent device may give more. [V]</summary>
    internal static CitedValue Class2TransformerBand { get; } =
        new("Class 2 with an overcurrent device: transformers of more apparent power up to", 15, "V", Sources.Class2FromMemory);

    /// <summary>Apparent power of a transformer with an overcurrent device up to that voltage. [VA]</summary>
    internal static CitedValue Class2TransformerPower { get; } =
        new("Class 2 with an overcurrent device: apparent power of a transformer up to 15 V, the device bypassed", 350, "VA",
            Sources.Class2FromMemory);

    /// <summary>Rated current of the overcurrent device up to 20 V. [A]</summary>
    internal static CitedValue Class2Device { get; } =
        new("Class 2: rating of the overcurrent device up to 20 V", 5, "A", Sources.Class2FromMemory);

    /// <summary>Rated current of the overcurrent device times voltage above 20 V. [A·V]</summary>
    internal static CitedValue Class2HighDevice { get; } =
        new("Class 2: rating of the overcurrent device × voltage above 20 V", 100, "A·V", Sources.Class2FromMemory);

    /// <summary>Voltage of Class 2 wiring where wet contact is likely, alternating. [V]</summary>
    internal static CitedValue Class2WetAc { get; } =
        new("Class 2: alternating voltage where wet contact is likely", 15, "V", Sources.Class2Notes);

    /// <summary>Voltage of Class 2 wiring where wet contact is likely, direct. [V]</summary>
    internal static CitedValue Class2WetDc { get; } =
        new("Class 2: continuous direct voltage where wet contact is likely", 30, "V", Sources.Class2Notes);
}
