using System;

namespace CamPower.Reports.Writing;

/// <summary>Hands out the ids of one page, each once.</summary>
internal sealed class HtmlPage
{
    private int _last;

    internal string NextId(string kind) => FormattableString.Invariant($"{kind}-{++_last}");
}
