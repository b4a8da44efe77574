using System;
using System.Globalization;
using System.Text.Json.Nodes;
using CamPower.Files.Formats;
using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Files.Readings;

/// <summary>The format of a meter's value: a voltage, a current or a resistance with its unit, or a resistance over range.</summary>
internal sealed class ReadValueFormat() : TextFormat<ReadValue>(
    "what the meter showed in V, mV, A, mA, ohm, mohm, kohm or Mohm, or 'over range'", new ReadValue(ElectricPotential.Zero))
{
    internal const string OverRange = "over range";

    private static readonly QuantityFormat<ElectricResistance, ElectricResistanceUnit> Megohms = new(
        "a resistance", ElectricResistance.From, ElectricResistance.Zero,
        [new(ElectricResistanceUnit.Megaohm, "Mohm", "M\u03A9", "M\u2126")]);

    internal override JsonObject Schema() => new() { ["type"] = "string" };

    internal override ReadValue Parse(string text)
    {
        string read = text.Trim();
        bool isOverRange = string.Equals(read, OverRange, StringComparison.OrdinalIgnoreCase)
            || string.Equals(read, "OL", StringComparison.OrdinalIgnoreCase);
        if (isOverRange) return new ReadValue(null);

        bool hasUnit = Number.TrySplit(read, out _, out string unit);
        if (hasUnit && Quantities.Voltage.Knows(unit, inAnyCase: false)) return new ReadValue(Quantities.Voltage.Parse(read));
        if (hasUnit && Quantities.Current.Knows(unit, inAnyCase: false)) return new ReadValue(Quantities.Current.Parse(read));
        if (hasUnit && Quantities.Resistance.Knows(unit, inAnyCase: false)) return new ReadValue(Quantities.Resistance.Parse(read));
        if (hasUnit && Megohms.Knows(unit, inAnyCase: false)) return new ReadValue(Megohms.Parse(read));
        throw new FormatException(hasUnit && unit.StartsWith(',')
            ? Phrase.Comma(read, "V")
            : $"{Phrase.Quoted(text)} is not {Description}: write a number with a decimal point, and a unit");
    }

    internal override string Text(ReadValue value) => value.Quantity switch
    {
        null => OverRange,
        ElectricPotential { Unit: ElectricPotentialUnit.Volt or ElectricPotentialUnit.Millivolt } volts => Quantities.Voltage.Text(volts),
        ElectricCurrent { Unit: ElectricCurrentUnit.Ampere or ElectricCurrentUnit.Milliampere } amperes => Quantities.Current.Text(amperes),
        ElectricResistance { Unit: ElectricResistanceUnit.Megaohm } ohms => Megohms.Text(ohms),
        ElectricResistance ohms => Quantities.Resistance.Text(ohms.ToUnit(UnitOf(ohms))),
        ElectricPotential volts => Quantities.Voltage.Text(volts.ToUnit(ElectricPotentialUnit.Volt)),
        ElectricCurrent amperes => Quantities.Current.Text(amperes.ToUnit(ElectricCurrentUnit.Ampere)),
        IQuantity other => throw new NotSupportedException($"No meter shows {other.ToString("s4", CultureInfo.InvariantCulture)}."),
    };

    private static ElectricResistanceUnit UnitOf(ElectricResistance ohms) =>
        ohms.Unit is ElectricResistanceUnit.Milliohm or ElectricResistanceUnit.Kiloohm ? ohms.Unit : ElectricResistanceUnit.Ohm;
}
