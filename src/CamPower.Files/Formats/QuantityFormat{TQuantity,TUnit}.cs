using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using UnitsNet;

namespace CamPower.Files.Formats;

/// <summary>A quantity as people write it: a number and a unit out of one table, used for reading and for writing.</summary>
/// <param name="noun">What the quantity is, for messages: "a length".</param>
/// <param name="make">Makes the quantity from a number and a unit.</param>
/// <param name="standIn">A harmless quantity in the place of one that is missing or wrong.</param>
/// <param name="table">The units that the format knows, each with its spellings; the first is the one that is written.</param>
internal sealed class QuantityFormat<TQuantity, TUnit>(string noun, Func<QuantityValue, TUnit, TQuantity> make, TQuantity standIn,
    params SpelledUnit<TUnit>[] table)
    : TextFormat<TQuantity>($"{noun} in {Phrase.List(table.Select(row => row.Written), "or")}", standIn)
    where TQuantity : struct, IQuantity<TUnit>
    where TUnit : struct, Enum
{
    private readonly Dictionary<string, SpelledUnit<TUnit>> _units = table
        .SelectMany(row => row.Spellings, (row, spelling) => KeyValuePair.Create(spelling, row)).ToDictionary(StringComparer.Ordinal);

    /// <summary>Every spelling of every unit.</summary>
    internal IEnumerable<string> Spellings => _units.Keys;

    /// <summary>Whether the quantity keeps its number as a decimal, as power does.</summary>
    internal bool IsDecimal { get; init; }
    private string Units => Phrase.List(table.Select(row => row.Written), "or");
    internal override JsonObject Schema() => Matching($"{Number.Pattern} ?({string.Join('|', Spellings.Select(Regex.Escape))})");

    /// <summary>Whether a unit is one of the table: as it is spelt, or but for its case.</summary>
    internal bool Knows(string unit, bool inAnyCase) => inAnyCase ? InOtherCase(unit) is not null : _units.ContainsKey(unit);

    internal override TQuantity Parse(string text)
    {
        if (!Number.TrySplit(text, out string number, out string spelling))
        {
            throw new FormatException($"{Phrase.Quoted(text)} is not {noun}: write a number with a decimal point, and a unit: {Units}");
        }

        if (!_units.TryGetValue(spelling, out SpelledUnit<TUnit>? unit)) throw new FormatException(UnitError(text, spelling));
        return TryMake(number, unit.Unit)
            ?? throw new FormatException($"{Phrase.Quoted(text)} is an impossible quantity: no number can hold it");
    }

    internal override string Text(TQuantity value)
    {
        string? spelling = Array.Find(table, row => row.Unit.Equals(value.Unit))?.Written;
        if (spelling is null) throw new NotSupportedException($"A site file cannot express {noun} in {value.Unit}: the units are {Units}.");
        string number = IsDecimal ? ((decimal)value.Value).ToString(CultureInfo.InvariantCulture) : Number.Text((double)value.Value);
        return $"{number} {spelling}";
    }

    private string UnitError(string text, string spelling)
    {
        if (spelling.StartsWith(',')) return Phrase.Comma(text, table[0].Written);
        if (spelling.Length == 0) return $"{Phrase.Quoted(text)} has no unit: {noun} is written in {Units}";
        string? meant = InOtherCase(spelling) ?? UnitNames.Of(spelling, Spellings);
        string hint = meant is null ? string.Empty : $"; write {Phrase.Quoted($"{text[..^spelling.Length].TrimEnd()} {meant}")}";
        return $"{Phrase.Quoted(text)} has the wrong unit: {noun} is written in {Units}{hint}";
    }

    private string? InOtherCase(string unit) =>
        Spellings.FirstOrDefault(known => string.Equals(known, unit, StringComparison.OrdinalIgnoreCase));

    // Null where the number, or the quantity in its base unit, is too large or too small for its type.
    private TQuantity? TryMake(string number, TUnit unit)
    {
        QuantityValue? value = IsDecimal ? Number.DecimalValue(number) : Number.Value(number);
        if (value is null) return null;
        try
        {
            TQuantity quantity = make(value.Value, unit);
            double inBaseUnit = quantity.As(quantity.QuantityInfo.BaseUnitInfo.Value);
            return double.IsFinite(inBaseUnit) ? quantity : null;
        }
        catch (Exception e) when (e is OverflowException or ArgumentException)
        {
            return null;
        }
    }
}
