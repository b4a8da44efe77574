using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>The form of one kind of value in a site file: it reads it, writes it and describes it in the schema.</summary>
/// <param name="expected">What is expected in the file, for messages: "a list", "text: a length in m, cm or ft".</param>
/// <param name="kinds">What can be read at all.</param>
internal abstract class Format<T>(string expected, params JsonTokenType[] kinds)
{
    internal string Expected => expected;
    internal JsonTokenType[] Kinds => kinds;

    /// <summary>Keywords that the schema adds to the description of a member.</summary>
    internal virtual string Note => string.Empty;

    /// <summary>The schema of the value, each time a new one.</summary>
    internal abstract JsonObject Schema();

    /// <summary>Writes the value so that reading gives it back.</summary>
    /// <exception cref="System.NotSupportedException">The format cannot express the value.</exception>
    internal abstract void Write(SiteWriter writer, T value);

    /// <summary>A harmless value in the place of one that is missing or wrong: no check that follows fails because of it.</summary>
    internal abstract T StandIn(Place at);

    /// <summary>Reads what is at a place; null where it is wrong, which is noted.</summary>
    internal virtual object? Read(Place at)
    {
        if (at.NoteOwnDepth()) return null;
        if (kinds.Contains(at.Kind)) return at.Value = ReadFrom(at);
        at.Refuse(expected);
        return null;
    }

    /// <summary>Reads what is of the right kind; null where it is wrong, which is noted.</summary>
    protected abstract object? ReadFrom(Place at);
}
