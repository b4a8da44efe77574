using System;
using System.Collections.Generic;
using System.Text.Json;
using System.Text.Json.Nodes;
using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Files.Formats;

/// <summary>One component of a draw: a quantity or a list of them, by whose units it is constant power, current or resistance.</summary>
internal sealed class LoadFormat() : Format<Load>($"a list, or {Quantity}", JsonTokenType.String, JsonTokenType.StartArray)
{
    private static string Quantity =>
        $"text: {Quantities.Power.Description}, {Quantities.Current.Description}, or {Quantities.Resistance.Description}";

    internal override JsonObject Schema() => new()
    {
        ["anyOf"] = new JsonArray(QuantitySchema(), new JsonObject { ["type"] = "array", ["minItems"] = 1, ["items"] = QuantitySchema() }),
    };

    internal override void Write(SiteWriter writer, Load value)
    {
        List<string> texts = Texts(value);
        if (texts.Count > 1) writer.Json.WriteStartArray();
        foreach (string text in texts) writer.Json.WriteStringValue(text);
        if (texts.Count > 1) writer.Json.WriteEndArray();
    }

    internal override Load StandIn(Place at) => Load.None;

    protected override object? ReadFrom(Place at)
    {
        if (at.Kind == JsonTokenType.String) return ReadOne(at);
        if (at.Children.Count == 0) at.Error("a component of the draw needs at least one quantity");
        var kinds = new HashSet<Type>();
        Load sum = Load.None;
        foreach (Place item in at.Children)
        {
            if (ReadOne(item) is not Load load) continue;
            if (!kinds.Add(item.Value!.GetType())) item.Error("a component holds at most one power, one current and one resistance");

            // The first keeps its number and unit, even where it is zero.
            else sum = ReferenceEquals(sum, Load.None) ? load : sum + load;
        }

        return at.HasError ? null : sum;
    }

    private static Load? ReadOne(Place at)
    {
        if (at.Kind == JsonTokenType.String) return at.Try(() => LoadOf(at.Value = Parse(at.Text!)));
        at.Refuse(Quantity);
        return null;
    }

    private static Load LoadOf(object quantity) => quantity switch
    {
        Power power => Load.ConstantPower(power),
        ElectricCurrent current => Load.ConstantCurrent(current),
        _ => Load.ConstantResistance((ElectricResistance)quantity),
    };

    private static object Parse(string text)
    {
        Number.TrySplit(text, out _, out string unit);

        // Of a unit in the wrong case, the quantity says what is wrong.
        foreach (bool inAnyCase in (bool[])[false, true])
        {
            if (Quantities.Power.Knows(unit, inAnyCase)) return Quantities.Power.Parse(text);
            if (Quantities.Current.Knows(unit, inAnyCase)) return Quantities.Current.Parse(text);
            if (Quantities.Resistance.Knows(unit, inAnyCase)) return Quantities.Resistance.Parse(text);
        }

        throw new FormatException(
            unit.StartsWith(',') ? Phrase.Comma(text, "W") : $"{Phrase.Quoted(text)} is no draw: write {Quantity["text: ".Length..]}");
    }

    // A share of zero is written only where it was given in a unit of its own, or where there is nothing else.
    private static List<string> Texts(Load load)
    {
        List<string> texts = [];
        (Power power, ElectricCurrent current) = (load.PowerComponent, load.CurrentComponent);
        if (power.Value != 0 || power.Unit != PowerUnit.Watt) texts.Add(Quantities.Power.Text(power));
        if (current.Value != 0 || current.Unit != ElectricCurrentUnit.Ampere) texts.Add(Quantities.Current.Text(current));
        if (load.ResistanceComponent is ElectricResistance resistance) texts.Add(Quantities.Resistance.Text(resistance));
        if (texts.Count == 0) texts.Add(Quantities.Power.Text(power));
        return texts;
    }

    private static JsonObject QuantitySchema() => new()
    {
        ["anyOf"] = new JsonArray(Quantities.Power.Schema(), Quantities.Current.Schema(), Quantities.Resistance.Schema()),
    };
}
