using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files.Formats;

/// <summary>The one table of older and British names of members and words, used to name the new one in an error.</summary>
internal static class OldName
{
    /// <summary>Old names, or parts of them, each with the new one.</summary>
    internal static IReadOnlyList<(string Old, string New)> Table { get; } =
    [
        ("outlet", "receptacle"), ("inlet", "input"), ("laying", "installationMethod"), ("timedCurrent", "testCurrent"),
        ("leastResistance", "minimumResistance"), ("greatestResistance", "maximumResistance"),
        ("leastMeltingIntegral", "minimumMeltingIntegral"),
        ("blade fuse, ATO class", "ISO 8820-3 type C"), ("blade fuse", "ISO 8820-3 type C"),
        ("aluminium", "aluminum"), ("galvanised", "galvanized"), ("behaviour", "behavior"), ("catalogue", "catalog"), ("centre", "center"),
        ("colour", "color"), ("grey", "gray"), ("metre", "meter"),
    ];

    /// <summary>The present name for an old one, out of the known names; null where it is no old one.</summary>
    internal static string? Of(string name, IReadOnlyCollection<string> known) => Table
        .Where(row => name.Contains(row.Old, StringComparison.OrdinalIgnoreCase))
        .Select(row => name.Replace(row.Old, row.New, StringComparison.OrdinalIgnoreCase))
        .Select(now => known.FirstOrDefault(k => string.Equals(k, now, StringComparison.OrdinalIgnoreCase)))
        .FirstOrDefault(now => now is not null);
}
