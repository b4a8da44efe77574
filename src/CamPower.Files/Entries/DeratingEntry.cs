using System.Collections.Generic;
using System.Text.Json.Nodes;
using CamPower.Files.Formats;

namespace CamPower.Files.Entries;

/// <summary>A derating curve: a list of points, or the name of a curve of the library.</summary>
internal sealed class DeratingEntry : List<DeratingPointEntry?>, IHasTextForm
{
    /// <summary>The curve of the library, or null where the points say it.</summary>
    internal Derating? Named { get; set; }

    public string TextDescription => Words.Derating.Description;

    public JsonObject TextSchema => Words.Derating.Schema;

    public void ReadText(string text) => Named = Words.Derating.Parse(text);

    public string? WriteText() => Named is null ? null : Words.Derating.Format(Named);
}
