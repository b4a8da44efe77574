using System;
using System.Collections.Generic;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A list of parts that other parts refer to by name.</summary>
/// <param name="noun">What each is, for messages.</param>
/// <param name="part">How each is written.</param>
/// <param name="nameOf">What each is named; null where it has no name.</param>
internal sealed class PartList<T>(string noun, ObjectFormat<T> part, Func<T, string?> nameOf)
    : Format<IReadOnlyList<T>>("a list", JsonTokenType.StartArray)
    where T : class
{
    private readonly ListFormat<T> _list = new(part);

    internal string Noun => noun;
    internal ObjectFormat<T> Part => part;
    internal Func<T, string?> NameOf => nameOf;

    /// <summary>The same part under a name of our own; null where every part has a name.</summary>
    internal Func<T, string, T>? Rename { get; init; }

    /// <summary>Whether a file need not have the list.</summary>
    internal bool MayBeLeftOut { get; init; }

    /// <summary>The parts that every file may refer to.</summary>
    internal IReadOnlyDictionary<string, T> Known { get; init; } = new Dictionary<string, T>(StringComparer.Ordinal);

    /// <summary>The format of a member that refers to a part of the list: its name.</summary>
    internal Format<T> Reference => new ReferenceFormat<T>(this);
    internal override JsonObject Schema() => _list.Schema();
    internal override void Write(SiteWriter writer, IReadOnlyList<T> value) => _list.Write(writer, value);
    internal override IReadOnlyList<T> StandIn(Place at) => [];

    internal override object? Read(Place at)
    {
        var parts = (IReadOnlyList<T>?)_list.Read(at);
        at.File.CatalogOf(this).Fill(parts, at);
        return parts;
    }

    protected override object? ReadFrom(Place at) => _list.Read(at);
}
