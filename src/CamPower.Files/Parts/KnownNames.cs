using System;
using System.Collections.Generic;

namespace CamPower.Files.Parts;

/// <summary>The names that references may use, and whether every one of them could be read.</summary>
internal sealed class KnownNames(IEnumerable<string> names, bool areComplete)
{
    private readonly HashSet<string> _names = new(names, StringComparer.Ordinal);

    internal IEnumerable<string> Names => _names;

    internal bool AreComplete => areComplete;

    internal bool Has(string name) => _names.Contains(name);
}
