using System.Text.Json;
using System.Text.Json.Nodes;
using CamPower.Files.Reading;
using CamPower.Files.Writing;

namespace CamPower.Files.Formats;

/// <summary>The name of a part of a list.</summary>
internal sealed class ReferenceFormat<T>(PartList<T> list) : Format<T>
    where T : class
{
    internal override string Expected => NameFormat.Instance.Expected;

    internal override JsonObject Schema() => NameFormat.Instance.Schema();

    internal override bool Fits(JsonTokenType kind) => NameFormat.Instance.Fits(kind);

    internal override void Write(SiteWriter writer, T value) => writer.WriteName(writer.Names.Of(value));

    internal override T StandIn(Place at) => list.Part.StandIn(at);

    protected override object? ReadFrom(Place at) => at.File.CatalogOf(list).Find(at.Text!, at);
}
