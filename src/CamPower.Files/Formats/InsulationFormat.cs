using System;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>An insulation: one of those that a standard names, or the temperature that is printed on it.</summary>
internal sealed class InsulationFormat : ITextFormat<Insulation>
{
    public string Description => $"{Words.Insulation.Description}; or {Quantities.Temperature.Description}";

    public JsonObject Schema => new()
    {
        ["anyOf"] = new JsonArray(Words.Insulation.Schema, Quantities.Temperature.Schema),
    };

    public Insulation Parse(string text)
    {
        if (!Number.TrySplit(text, out _, out _)) return Words.Insulation.Parse(text);
        try
        {
            return Insulation.Rated(Quantities.Temperature.Parse(text));
        }
        catch (ArgumentOutOfRangeException e)
        {
            throw new FormatException($"{Phrase.Quoted(text)} is no rating of an insulation: {e.Message}", e);
        }
    }

    public string Format(Insulation value) =>
        value.HighestInFault is null ? Quantities.Temperature.Format(value.HighestInService) : Words.Insulation.Format(value);
}
