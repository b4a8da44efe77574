using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>True or false, as JSON writes them.</summary>
internal sealed class YesNoFormat() : Format<bool>("true or false", JsonTokenType.True, JsonTokenType.False)
{
    internal override JsonObject Schema() => new() { ["type"] = "boolean" };

    internal override void Write(SiteWriter writer, bool value) => writer.Json.WriteBooleanValue(value);

    internal override bool StandIn(Place at) => false;

    protected override object? ReadFrom(Place at) => at.Kind == JsonTokenType.True;
}
