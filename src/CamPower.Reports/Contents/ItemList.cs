using System.Collections.Generic;

namespace CamPower.Reports.Contents;

/// <summary>Sentences in a list.</summary>
internal sealed record ItemList(IReadOnlyList<string> Items) : Block;
