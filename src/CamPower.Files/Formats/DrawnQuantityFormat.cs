using System;
using System.Text.Json.Nodes;
using UnitsNet;

namespace CamPower.Files.Formats;

/// <summary>A share of a draw: its unit says whether it is constant power, constant current or constant resistance.</summary>
internal sealed class DrawnQuantityFormat : ITextFormat<IQuantity>
{
    public string Description => $"{Quantities.Power.Description}, {Quantities.Current.Description}, or {Quantities.Resistance.Description}";

    public JsonObject Schema => new()
    {
        ["anyOf"] = new JsonArray(Quantities.Power.Schema, Quantities.Current.Schema, Quantities.Resistance.Schema),
    };

    public IQuantity Parse(string text)
    {
        Number.TrySplit(text, out _, out string unit);
        return ParseIn(text, Quantities.Power.Knows(unit), Quantities.Current.Knows(unit), Quantities.Resistance.Knows(unit))
            ?? ParseIn(text, Quantities.Power.KnowsInOtherCase(unit), Quantities.Current.KnowsInOtherCase(unit), Quantities.Resistance.KnowsInOtherCase(unit))
            ?? throw new FormatException($"{Phrase.Quoted(text)} is no draw: write {Description}");
    }

    public string Format(IQuantity value) => value switch
    {
        Power power => Quantities.Power.Format(power),
        ElectricCurrent current => Quantities.Current.Format(current),
        ElectricResistance resistance => Quantities.Resistance.Format(resistance),
        _ => throw new NotSupportedException($"A site file cannot express a draw in {value.Unit}."),
    };

    private static IQuantity? ParseIn(string text, bool isPower, bool isCurrent, bool isResistance)
    {
        if (isPower) return Quantities.Power.Parse(text);
        if (isCurrent) return Quantities.Current.Parse(text);
        return isResistance ? Quantities.Resistance.Parse(text) : null;
    }
}
