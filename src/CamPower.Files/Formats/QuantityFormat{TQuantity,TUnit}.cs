using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using UnitsNet;

namespace CamPower.Files.Formats;

/// <summary>A quantity as people write it: a number and a unit out of one table, used for reading and for writing.</summary>
internal sealed class QuantityFormat<TQuantity, TUnit> : TextFormat<TQuantity>
    where TQuantity : struct, IQuantity<TUnit>
    where TUnit : struct, Enum
{
    private readonly string _noun;
    private readonly Func<QuantityValue, TUnit, TQuantity> _make;
    private readonly Func<QuantityValue, string> _numberOf;
    private readonly Func<string, QuantityValue?> _numberFrom;
    private readonly Dictionary<string, TUnit> _units;
    private readonly Dictionary<TUnit, string> _spellings;

    /// <summary>States the format.</summary>
    /// <param name="noun">What the quantity is, for messages: "a length".</param>
    /// <param name="make">Makes the quantity from a number and a unit.</param>
    /// <param name="standIn">A harmless quantity in the place of one that is missing or wrong.</param>
    /// <param name="table">The units that the format knows.</param>
    /// <param name="isDecimal">Whether the quantity keeps its number as a decimal, as power does.</param>
    internal QuantityFormat(string noun, Func<QuantityValue, TUnit, TQuantity> make, TQuantity standIn, UnitSpelling<TUnit>[] table,
        bool isDecimal = false)
        : base(standIn)
    {
        _noun = noun;
        _make = make;
        _numberFrom = isDecimal ? DecimalFrom : DoubleFrom;
        _numberOf = isDecimal ? v => ((decimal)v).ToString(CultureInfo.InvariantCulture) : v => Number.Text((double)v);
        _units = table.SelectMany(row => row.Spellings, (row, spelling) => (row.Unit, spelling))
            .ToDictionary(x => x.spelling, x => x.Unit, StringComparer.Ordinal);
        _spellings = table.ToDictionary(row => row.Unit, row => row.Spellings[0]);
    }

    internal override string Description => $"{_noun} in {Units}";

    internal override JsonObject Schema() => new()
    {
        ["type"] = "string",
        ["description"] = Description,
        ["pattern"] = $"^{Number.Pattern} ?({string.Join('|', _units.Keys.Select(Regex.Escape))})$",
    };

    /// <summary>Every spelling of every unit.</summary>
    internal IEnumerable<string> Spellings => _units.Keys;

    private string Units => Phrase.List(_spellings.Values, "or");

    /// <summary>Whether a unit, as it is spelt, is one of the table.</summary>
    internal bool Knows(string unit) => _units.ContainsKey(unit);

    /// <summary>Whether a unit is one of the table but for its case.</summary>
    internal bool KnowsInOtherCase(string unit) => InOtherCase(unit) is not null;

    internal override TQuantity Parse(string text)
    {
        if (!Number.TrySplit(text, out string number, out string spelling))
        {
            throw new FormatException($"{Phrase.Quoted(text)} is not {_noun}: write a number with a decimal point, and a unit: {Units}");
        }

        if (!_units.TryGetValue(spelling, out TUnit unit)) throw new FormatException(UnitFault(text, spelling));
        return TryMake(number, unit) ?? throw new FormatException($"{Phrase.Quoted(text)} is an impossible quantity: no number can hold it");
    }

    internal override string Text(TQuantity value) => _spellings.TryGetValue(value.Unit, out string? spelling)
        ? $"{_numberOf(value.Value)} {spelling}"
        : throw new NotSupportedException($"A site file cannot express {_noun} in {value.Unit}: the units are {Units}.");

    private string UnitFault(string text, string spelling)
    {
        if (spelling.Length == 0) return $"{Phrase.Quoted(text)} has no unit: {_noun} is written in {Units}";
        string hint = InOtherCase(spelling) is string known ? $"; only the case of '{spelling}' is not that of '{known}'" : string.Empty;
        return $"{Phrase.Quoted(text)} has the wrong unit: {_noun} is written in {Units}{hint}";
    }

    private string? InOtherCase(string unit) => _units.Keys.FirstOrDefault(known => string.Equals(known, unit, StringComparison.OrdinalIgnoreCase));

    // Null where the number, or the quantity in its base unit, is too large or too small for its type.
    private TQuantity? TryMake(string number, TUnit unit)
    {
        if (_numberFrom(number) is not QuantityValue value) return null;
        try
        {
            TQuantity quantity = _make(value, unit);
            double inBaseUnit = quantity.As(quantity.QuantityInfo.BaseUnitInfo.Value);
            return double.IsFinite(inBaseUnit) ? quantity : null;
        }
        catch (Exception e) when (e is OverflowException or ArgumentException)
        {
            return null;
        }
    }

    private static QuantityValue? DoubleFrom(string number) => Number.Value(number) is double value ? value : null;

    private static QuantityValue? DecimalFrom(string number)
    {
        bool known = decimal.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal value);
        bool vanished = value == 0 && Number.HasSignificantDigit(number);
        return known && !vanished ? value : null;
    }
}
