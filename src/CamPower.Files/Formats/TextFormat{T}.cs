using System;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A value that is written as text.</summary>
/// <param name="description">What the text is, for messages: "a length in m, cm or ft".</param>
/// <param name="standIn">A harmless value in the place of one that is missing or wrong.</param>
internal abstract class TextFormat<T>(string description, T standIn) : Format<T>($"text: {description}", JsonTokenType.String)
{
    internal string Description => description;

    internal sealed override string Note => Schema().ContainsKey("pattern") ? $" Written as {description}." : string.Empty;

    /// <summary>Reads the text.</summary>
    /// <exception cref="FormatException">The text is no such value; the message says why.</exception>
    internal abstract T Parse(string text);

    /// <summary>The text of a value.</summary>
    /// <exception cref="NotSupportedException">The format cannot express the value.</exception>
    internal abstract string Text(T value);

    internal sealed override void Write(SiteWriter writer, T value) => writer.Json.WriteStringValue(Text(value));

    internal sealed override T StandIn(Place at) => standIn;

    /// <summary>The schema of texts of a pattern.</summary>
    protected JsonObject Matching(string pattern) => new()
    {
        ["type"] = "string",
        ["description"] = description,
        ["pattern"] = $"^{pattern}$",
    };

    protected sealed override object? ReadFrom(Place at) => at.Try<object>(() => Parse(at.Text!)!);
}
