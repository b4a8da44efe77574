using System;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A value that is made of what another format reads, such as a curve of its points.</summary>
internal sealed class MadeFormat<TRaw, T>(Format<TRaw> raw, Func<TRaw, T> make, Func<T, TRaw> takeApart)
    : Format<T>(raw.Expected, raw.Kinds)
{
    internal override JsonObject Schema() => raw.Schema();
    internal override void Write(SiteWriter writer, T value) => raw.Write(writer, takeApart(value));
    internal override T StandIn(Place at) => make(raw.StandIn(at));
    protected override object? ReadFrom(Place at) => raw.Read(at) is TRaw read && !at.HasError ? at.Try<object>(() => make(read)!) : null;
}
