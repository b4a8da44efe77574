using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>How one kind of value is written as text in a site file.</summary>
internal interface ITextFormat
{
    /// <summary>What the text is, for messages: "a length in m, cm or ft".</summary>
    string Description { get; }

    /// <summary>The schema of the text.</summary>
    JsonObject Schema { get; }
}
