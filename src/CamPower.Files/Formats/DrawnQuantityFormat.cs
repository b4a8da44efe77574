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
        if (Quantities.Power.Knows(unit)) return Quantities.Power.Parse(text);
        if (Quantities.Current.Knows(unit)) return Quantities.Current.Parse(text);
        if (Quantities.Resistance.Knows(unit)) return Quantities.Resistance.Parse(text);
        throw new FormatException($"{Phrase.Quoted(text)} is no draw: write {Description}");
    }

    public string Format(IQuantity value) => value switch
    {
        Power power => Quantities.Power.Format(power),
        ElectricCurrent current => Quantities.Current.Format(current),
        ElectricResistance resistance => Quantities.Resistance.Format(resistance),
        _ => throw new NotSupportedException($"A site file cannot express a draw in {value.Unit}."),
    };
}
