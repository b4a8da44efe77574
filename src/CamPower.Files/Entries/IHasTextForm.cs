using System;
using System.Text.Json.Nodes;

namespace CamPower.Files.Entries;

/// <summary>An object or a list that may also be written as one text.</summary>
internal interface IHasTextForm
{
    /// <summary>What the text is, for messages.</summary>
    string TextDescription { get; }

    /// <summary>The schema of the text.</summary>
    JsonObject TextSchema { get; }

    /// <summary>Takes the text.</summary>
    /// <exception cref="FormatException">The text says nothing known.</exception>
    void ReadText(string text);

    /// <summary>The text, or null where it takes the other form.</summary>
    string? WriteText();
}
