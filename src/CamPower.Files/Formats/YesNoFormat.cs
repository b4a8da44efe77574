using System.Text.Json;
using System.Text.Json.Nodes;
using CamPower.Files.Reading;
using CamPower.Files.Writing;

namespace CamPower.Files.Formats;

/// <summary>True or false, as JSON writes them.</summary>
internal sealed class YesNoFormat : Format<bool>
{
    internal static YesNoFormat Instance { get; } = new();

    internal override string Expected => "true or false";

    internal override JsonObject Schema() => new() { ["type"] = "boolean" };

    internal override bool Fits(JsonTokenType kind) => kind is JsonTokenType.True or JsonTokenType.False;

    internal override void Write(SiteWriter writer, bool value) => writer.Json.WriteBooleanValue(value);

    internal override bool StandIn(Place at) => false;

    protected override object? ReadFrom(Place at) => at.Kind == JsonTokenType.True;
}
