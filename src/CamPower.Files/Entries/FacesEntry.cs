using System.Collections.Generic;
using System.Text.Json.Nodes;
using CamPower.Files.Formats;

namespace CamPower.Files.Entries;

/// <summary>Free faces of an enclosure: a list of them, or the name of a usual way to mount one.</summary>
internal sealed class FacesEntry : List<Written<EnclosureFaces>?>, IHasTextForm
{
    /// <summary>The faces that a way to mount it leaves free, or null where the list says it.</summary>
    internal EnclosureFaces? Named { get; set; }

    public string TextDescription => Words.Mounting.Description;

    public JsonObject TextSchema => Words.Mounting.Schema;

    public void ReadText(string text) => Named = Words.Mounting.Parse(text);

    public string? WriteText() => Named is EnclosureFaces faces ? Words.Mounting.Format(faces) : null;
}
