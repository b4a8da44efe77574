using System;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>An insulation: one of those that a standard names, or the temperature that is printed on it.</summary>
internal sealed class InsulationFormat() : TextFormat<Insulation>(Insulation.Pvc70)
{
    internal static InsulationFormat Instance { get; } = new();

    internal override string Description => $"{Words.Insulation.Description}; or {Quantities.Temperature.Description}";

    internal override JsonObject Schema() => new()
    {
        ["anyOf"] = new JsonArray(Words.Insulation.Schema(), Quantities.Temperature.Schema()),
    };

    internal override Insulation Parse(string text)
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

    internal override string Text(Insulation value) =>
        value.HighestInFault is null ? Quantities.Temperature.Text(value.HighestInService) : Words.Insulation.Text(value);
}
