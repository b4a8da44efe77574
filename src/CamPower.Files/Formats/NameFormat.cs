using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A name: of a part, or of one that another part refers to.</summary>
internal sealed class NameFormat() : Format<string>("text", JsonTokenType.String)
{
    internal override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = @"\S" };

    internal override void Write(SiteWriter writer, string value) => writer.WriteName(value);

    /// <summary>The path: a name that nobody refers to.</summary>
    internal override string StandIn(Place at) => at.Path;

    protected override object? ReadFrom(Place at)
    {
        if (!string.IsNullOrWhiteSpace(at.Text)) return at.Text;
        at.Fault("a name must not be empty");
        return null;
    }
}
