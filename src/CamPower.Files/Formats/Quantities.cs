using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Files.Formats;

/// <summary>The quantities of a site file, what replaces one, and the spellings of their units: the one table.</summary>
internal static class Quantities
{
    internal static QuantityFormat<Length, LengthUnit> Length { get; } = new("a length", UnitsNet.Length.From, UnitsNet.Length.Zero,
        new(LengthUnit.Meter, "m"), new(LengthUnit.Centimeter, "cm"), new(LengthUnit.Millimeter, "mm"), new(LengthUnit.Kilometer, "km"),
        new(LengthUnit.Foot, "ft"), new(LengthUnit.Inch, "in"), new(LengthUnit.Yard, "yd"));

    internal static QuantityFormat<ElectricPotential, ElectricPotentialUnit> Voltage { get; } = new(
        "a voltage", ElectricPotential.From, ElectricPotential.FromVolts(12),
        new(ElectricPotentialUnit.Volt, "V"), new(ElectricPotentialUnit.Millivolt, "mV"), new(ElectricPotentialUnit.Kilovolt, "kV"));

    internal static QuantityFormat<ElectricCurrent, ElectricCurrentUnit> Current { get; } = new(
        "a current", ElectricCurrent.From, ElectricCurrent.FromAmperes(1),
        new(ElectricCurrentUnit.Ampere, "A"), new(ElectricCurrentUnit.Milliampere, "mA"));

    // The second omega is the old ohm sign, U+2126.
    internal static QuantityFormat<ElectricResistance, ElectricResistanceUnit> Resistance { get; } = new(
        "a resistance", ElectricResistance.From, ElectricResistance.FromOhms(1),
        new(ElectricResistanceUnit.Ohm, "ohm", "\u03A9", "\u2126"),
        new(ElectricResistanceUnit.Milliohm, "mohm", "m\u03A9", "m\u2126"),
        new(ElectricResistanceUnit.Kiloohm, "kohm", "k\u03A9", "k\u2126"));

    internal static QuantityFormat<Power, PowerUnit> Power { get; } = new("a power", UnitsNet.Power.From, UnitsNet.Power.FromWatts(1),
        new(PowerUnit.Watt, "W"), new(PowerUnit.Milliwatt, "mW"), new(PowerUnit.Kilowatt, "kW")) { IsDecimal = true };

    internal static QuantityFormat<ElectricApparentPower, ElectricApparentPowerUnit> ApparentPower { get; } = new("an apparent power",
        ElectricApparentPower.From, ElectricApparentPower.FromVoltamperes(1),
        new(ElectricApparentPowerUnit.Voltampere, "VA"), new(ElectricApparentPowerUnit.Kilovoltampere, "kVA"));

    internal static QuantityFormat<Temperature, TemperatureUnit> Temperature { get; } = new(
        "a temperature", UnitsNet.Temperature.From, UnitsNet.Temperature.FromDegreesCelsius(20),
        new(TemperatureUnit.DegreeCelsius, "C", "\u00B0C"), new(TemperatureUnit.DegreeFahrenheit, "F", "\u00B0F"),
        new(TemperatureUnit.Kelvin, "K"));

    internal static QuantityFormat<Ratio, RatioUnit> Share { get; } = new(
        "a percentage", Ratio.From, Ratio.FromPercent(100), [new(RatioUnit.Percent, "%")]);

    internal static QuantityFormat<Duration, DurationUnit> Duration { get; } = new(
        "a duration", UnitsNet.Duration.From, UnitsNet.Duration.FromSeconds(1),
        new(DurationUnit.Second, "s"), new(DurationUnit.Millisecond, "ms"), new(DurationUnit.Minute, "min"), new(DurationUnit.Hour, "h"),
        new(DurationUnit.Day, "d"));

    // The second micro is the Greek letter, U+03BC.
    internal static QuantityFormat<ElectricCapacitance, ElectricCapacitanceUnit> Capacitance { get; } = new(
        "a capacitance", ElectricCapacitance.From, ElectricCapacitance.FromMicrofarads(1),
        new(ElectricCapacitanceUnit.Microfarad, "uF", "\u00B5F", "\u03BCF"), new(ElectricCapacitanceUnit.Millifarad, "mF"),
        new(ElectricCapacitanceUnit.Nanofarad, "nF"), new(ElectricCapacitanceUnit.Farad, "F"));

    internal static QuantityFormat<Frequency, FrequencyUnit> Frequency { get; } = new(
        "a frequency", UnitsNet.Frequency.From, UnitsNet.Frequency.FromHertz(60), [new(FrequencyUnit.Hertz, "Hz")]);

    internal static QuantityFormat<TemperatureDelta, TemperatureDeltaUnit> Rise { get; } = new(
        "a rise of temperature", TemperatureDelta.From, TemperatureDelta.FromKelvins(1), [new(TemperatureDeltaUnit.Kelvin, "K")]);

    internal static QuantityFormat<Area, AreaUnit> Area { get; } = new("an area", UnitsNet.Area.From, UnitsNet.Area.Zero,
        new(AreaUnit.SquareMeter, "m2", "m\u00B2"), new(AreaUnit.SquareCentimeter, "cm2", "cm\u00B2"),
        new(AreaUnit.SquareFoot, "ft2", "ft\u00B2"));

    internal static QuantityFormat<Irradiance, IrradianceUnit> Sunlight { get; } = new(
        "sunlight", Irradiance.From, Irradiance.Zero, [new(IrradianceUnit.WattPerSquareMeter, "W/m2", "W/m\u00B2")]);

    internal static QuantityFormat<ThermalResistance, ThermalResistanceUnit> Insulance { get; } = new(
        "a thermal resistance", ThermalResistance.From, ThermalResistance.Zero,
        [new(ThermalResistanceUnit.SquareMeterKelvinPerWatt, "m2K/W", "m\u00B2K/W")]);

    internal static JouleIntegralFormat JouleIntegral { get; } = new();
    internal static WireSizeFormat WireSize { get; } = new();
    internal static LoadFormat Load { get; } = new();

    internal static QuantityFormat<ElectricCharge, ElectricChargeUnit> Charge { get; } = new(
        "a charge", ElectricCharge.From, ElectricCharge.FromAmpereHours(1),
        new(ElectricChargeUnit.AmpereHour, "Ah"), new(ElectricChargeUnit.MilliampereHour, "mAh"));

    /// <summary>A number without a unit.</summary>
    internal static DecimalFormat Plain { get; } = new();

    /// <summary>A whole number without a unit.</summary>
    internal static NumberFormat Count { get; } = new();
}
