using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A list of values of one kind.</summary>
/// <param name="item">How each is written.</param>
/// <param name="errorOfNone">What is wrong with a list of nothing; null where nothing is.</param>
internal sealed class ListFormat<T>(Format<T> item, string? errorOfNone = null)
    : Format<IReadOnlyList<T>>("a list", JsonTokenType.StartArray)
{
    internal override JsonObject Schema()
    {
        var schema = new JsonObject { ["type"] = "array", ["items"] = item.Schema() };
        if (errorOfNone is not null) schema["minItems"] = 1;
        return schema;
    }

    internal override void Write(SiteWriter writer, IReadOnlyList<T> value)
    {
        writer.Json.WriteStartArray();
        foreach (T one in value) item.Write(writer, one);
        writer.Json.WriteEndArray();
    }

    internal override IReadOnlyList<T> StandIn(Place at) => [];

    protected override object? ReadFrom(Place at)
    {
        if (at.Children.Count > 0 || errorOfNone is null)
        {
            return at.Children.Select(place => item.Read(place) is T read ? read : item.StandIn(place)).ToArray();
        }

        at.Error(errorOfNone);
        return null;
    }
}
