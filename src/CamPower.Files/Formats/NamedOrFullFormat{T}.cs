using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A value of the library by its name, or one of the user's in full.</summary>
internal sealed class NamedOrFullFormat<T>(WordFormat<T> words, Format<T> full)
    : Format<T>($"{full.Expected}, or {words.Expected}", [JsonTokenType.String, .. full.Kinds])
{
    internal override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(words.Schema(), full.Schema()) };

    internal override void Write(SiteWriter writer, T value)
    {
        if (words.Knows(value)) words.Write(writer, value);
        else full.Write(writer, value);
    }

    internal override T StandIn(Place at) => words.StandIn(at);

    protected override object? ReadFrom(Place at) => at.Kind == JsonTokenType.String ? words.Read(at) : full.Read(at);
}
