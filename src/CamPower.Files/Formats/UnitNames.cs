using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files.Formats;

/// <summary>Names of units that people write in place of their symbols.</summary>
internal static class UnitNames
{
    private static readonly (string Name, string Symbol)[] Names =
    [
        ("foot", "ft"), ("feet", "ft"), ("inch", "in"), ("inches", "in"), ("yard", "yd"), ("yards", "yd"), ("meter", "m"), ("meters", "m"),
        ("metre", "m"), ("metres", "m"), ("amp", "A"), ("amps", "A"), ("ampere", "A"), ("amperes", "A"), ("volt", "V"), ("volts", "V"),
        ("watt", "W"), ("watts", "W"), ("ohms", "ohm"), ("hour", "h"), ("hours", "h"), ("hrs", "h"), ("minutes", "min"), ("seconds", "s"),
    ];

    /// <summary>The symbol of a name, where it is one of those known; else null.</summary>
    internal static string? Of(string name, IEnumerable<string> known)
    {
        string? symbol = Array.Find(Names, row => string.Equals(row.Name, name, StringComparison.OrdinalIgnoreCase)).Symbol;
        return symbol is not null && known.Contains(symbol, StringComparer.Ordinal) ? symbol : null;
    }
}
