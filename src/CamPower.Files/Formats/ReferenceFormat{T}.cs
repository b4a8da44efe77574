using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>The name of a part of a list.</summary>
internal sealed class ReferenceFormat<T>(PartList<T> list) : Format<T>("text", JsonTokenType.String)
    where T : class
{
    internal override JsonObject Schema() => Words.Name.Schema();

    internal override void Write(SiteWriter writer, T value) => writer.WriteName(writer.Names.Of(value));

    internal override T StandIn(Place at) => list.Part.StandIn(at);

    protected override object? ReadFrom(Place at) => at.File.CatalogOf(list).Find(at.Text!, at);
}
