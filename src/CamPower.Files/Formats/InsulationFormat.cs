using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>An insulation: one of those that a standard names, or the temperature that is printed on it.</summary>
internal sealed class InsulationFormat(WordFormat<Insulation> words)
    : TextFormat<Insulation>($"{words.Description}; or {Quantities.Temperature.Description}", Insulation.Pvc70)
{
    internal override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(words.Schema(), Quantities.Temperature.Schema()) };

    internal override Insulation Parse(string text) =>
        Number.TrySplit(text, out _, out _) ? Insulation.Rated(Quantities.Temperature.Parse(text)) : words.Parse(text);

    internal override string Text(Insulation value) =>
        value.HighestInFault is null ? Quantities.Temperature.Text(value.HighestInService) : words.Text(value);
}
