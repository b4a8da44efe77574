using System.Collections.Generic;
using System.Text.Json.Nodes;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Entries;

/// <summary>One share of a draw: a list of quantities, or the text of one.</summary>
internal sealed class ShareEntry : List<Written<IQuantity>?>, IHasTextForm
{
    private static readonly DrawnQuantityFormat Quantity = new();

    public string TextDescription => Quantity.Description;

    public JsonObject TextSchema => Quantity.Schema;

    public void ReadText(string text) => Add(new Written<IQuantity>(Quantity.Parse(text)));

    public string? WriteText() => Count == 1 ? Quantity.Format(this[0]!.Value) : null;
}
