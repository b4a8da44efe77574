using System.Text.Json;
using System.Text.Json.Nodes;
using CamPower.Files.Reading;

namespace CamPower.Files.Formats;

/// <summary>How one kind of value is written in a site file: what reads it, writes it and describes it in the schema.</summary>
internal abstract class Format
{
    /// <summary>What is expected in the file, for messages: "a list", "text: a length in m, cm or ft".</summary>
    internal abstract string Expected { get; }

    /// <summary>What the schema adds to the description of a member.</summary>
    internal virtual string Note => string.Empty;

    /// <summary>The schema of the value, each time a new one.</summary>
    internal abstract JsonObject Schema();

    /// <summary>Reads what stands at a place; null where it is wrong, which is noted.</summary>
    internal virtual object? Read(Place at)
    {
        if (at.NoteOwnDepth()) return null;
        if (Fits(at.Kind)) return at.Value = ReadFrom(at);
        at.Refuse(Expected);
        return null;
    }

    /// <summary>Whether such a thing can be read at all.</summary>
    internal abstract bool Fits(JsonTokenType kind);

    /// <summary>Reads what fits; null where it is wrong, which is noted.</summary>
    protected abstract object? ReadFrom(Place at);
}
