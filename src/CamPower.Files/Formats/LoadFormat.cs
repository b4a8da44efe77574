using System;
using System.Collections.Generic;
using System.Text.Json;
using System.Text.Json.Nodes;
using CamPower.Files.Reading;
using CamPower.Files.Writing;
using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Files.Formats;

/// <summary>One share of a draw: a quantity or a list of them, whose units say whether it is constant power, current or resistance.</summary>
internal sealed class LoadFormat : Format<Load>
{
    internal static LoadFormat Instance { get; } = new();

    internal override string Expected => $"a list, or text: {Quantity}";

    private static string Quantity => $"{Quantities.Power.Description}, {Quantities.Current.Description}, or {Quantities.Resistance.Description}";

    internal override JsonObject Schema() => new()
    {
        ["anyOf"] = new JsonArray(QuantitySchema(), new JsonObject { ["type"] = "array", ["minItems"] = 1, ["items"] = QuantitySchema() }),
    };

    internal override bool Fits(JsonTokenType kind) => kind is JsonTokenType.String or JsonTokenType.StartArray;

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
        if (at.Children.Count == 0) at.Fault("a share needs at least one quantity");
        var kinds = new HashSet<Type>();
        Load sum = Load.None;
        foreach (Place item in at.Children)
        {
            if (ReadOne(item) is not Load load) continue;
            if (!kinds.Add(item.Value!.GetType())) item.Fault("a share holds at most one power, one current and one resistance");
            else sum = ReferenceEquals(sum, Load.None) ? load : sum + load;
        }

        return at.IsFaulty ? null : sum;
    }

    private static Load? ReadOne(Place at)
    {
        if (at.Kind != JsonTokenType.String)
        {
            at.Refuse($"text: {Quantity}");
            return null;
        }

        try
        {
            at.Value = Parse(at.Text!);
            return at.Value switch
            {
                Power power => Load.ConstantPower(power),
                ElectricCurrent current => Load.ConstantCurrent(current),
                var resistance => Load.ConstantResistance((ElectricResistance)resistance),
            };
        }
        catch (Exception e) when (e is FormatException or ArgumentException)
        {
            at.Fault(e is ArgumentException refused ? Phrase.MessageOf(refused) : e.Message);
            return null;
        }
    }

    private static object Parse(string text)
    {
        Number.TrySplit(text, out _, out string unit);
        if (Quantities.Power.Knows(unit)) return Quantities.Power.Parse(text);
        if (Quantities.Current.Knows(unit)) return Quantities.Current.Parse(text);
        if (Quantities.Resistance.Knows(unit)) return Quantities.Resistance.Parse(text);

        // Each says then that only the case is wrong.
        if (Quantities.Power.KnowsInOtherCase(unit)) return Quantities.Power.Parse(text);
        if (Quantities.Current.KnowsInOtherCase(unit)) return Quantities.Current.Parse(text);
        if (Quantities.Resistance.KnowsInOtherCase(unit)) return Quantities.Resistance.Parse(text);
        throw new FormatException($"{Phrase.Quoted(text)} is no draw: write {Quantity}");
    }

    // A share of zero is written only where it was given in a unit of its own, or where there is nothing else.
    private static List<string> Texts(Load load)
    {
        List<string> texts = [];
        if (load.PowerShare.Value != 0 || load.PowerShare.Unit != PowerUnit.Watt) texts.Add(Quantities.Power.Text(load.PowerShare));
        if (load.CurrentShare.Value != 0 || load.CurrentShare.Unit != ElectricCurrentUnit.Ampere) texts.Add(Quantities.Current.Text(load.CurrentShare));
        if (load.ResistanceShare is ElectricResistance resistance) texts.Add(Quantities.Resistance.Text(resistance));
        if (texts.Count == 0) texts.Add(Quantities.Power.Text(load.PowerShare));
        return texts;
    }

    private static JsonObject QuantitySchema() => new()
    {
        ["anyOf"] = new JsonArray(Quantities.Power.Schema(), Quantities.Current.Schema(), Quantities.Resistance.Schema()),
    };
}
