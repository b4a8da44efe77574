using System;
using System.Text.Json;
using CamPower.Files.Reading;
using CamPower.Files.Writing;

namespace CamPower.Files.Formats;

/// <summary>A value that is written as text.</summary>
internal abstract class TextFormat<T>(T standIn) : Format<T>
{
    /// <summary>What the text is, for messages: "a length in m, cm or ft".</summary>
    internal abstract string Description { get; }

    internal sealed override string Expected => $"text: {Description}";

    internal sealed override string Note => Schema().ContainsKey("pattern") ? $" Written as {Description}." : string.Empty;

    /// <summary>Reads the text.</summary>
    /// <exception cref="FormatException">The text is no such value; the message says why.</exception>
    internal abstract T Parse(string text);

    /// <summary>The text of a value.</summary>
    /// <exception cref="NotSupportedException">The format cannot express the value.</exception>
    internal abstract string Text(T value);

    internal sealed override bool Fits(JsonTokenType kind) => kind == JsonTokenType.String;

    internal sealed override void Write(SiteWriter writer, T value) => writer.Json.WriteStringValue(Text(value));

    internal sealed override T StandIn(Place at) => standIn;

    protected sealed override object? ReadFrom(Place at)
    {
        try
        {
            return Parse(at.Text!);
        }
        catch (FormatException e)
        {
            at.Fault(e.Message);
            return null;
        }
    }
}
