using System;
using System.Text.Json;
using System.Text.Json.Nodes;
using CamPower.Files.Reading;
using CamPower.Files.Writing;

namespace CamPower.Files.Formats;

/// <summary>A value that is made of what another format reads, such as a curve of its points.</summary>
internal sealed class MadeFormat<TRaw, T>(Format<TRaw> raw, Func<TRaw, T> make, Func<T, TRaw> takeApart) : Format<T>
{
    internal override string Expected => raw.Expected;

    internal override JsonObject Schema() => raw.Schema();

    internal override bool Fits(JsonTokenType kind) => raw.Fits(kind);

    internal override void Write(SiteWriter writer, T value) => raw.Write(writer, takeApart(value));

    internal override T StandIn(Place at) => make(raw.StandIn(at));

    protected override object? ReadFrom(Place at)
    {
        if (raw.Read(at) is not TRaw read || at.IsFaulty) return null;
        try
        {
            return make(read);
        }
        catch (ArgumentException e)
        {
            at.Fault(Phrase.MessageOf(e));
            return null;
        }
    }
}
