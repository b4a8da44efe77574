using System;
using System.Collections.Generic;

namespace CamPower.Checks;

/// <summary>Identifiers of rules and inspections: lowercase letters, digits and hyphens.</summary>
internal static class Identifier
{
    internal static string Of(string id, string parameter)
    {
        foreach (char c in Require.Name(id, parameter))
        {
            if (c is not ((>= 'a' and <= 'z') or (>= '0' and <= '9') or '-'))
            {
                throw new ArgumentException($"The identifier '{id}' may have only lowercase letters, digits and hyphens.", parameter);
            }
        }

        return id;
    }

    /// <summary>The first identifier that is used twice, or null.</summary>
    internal static string? FirstRepeated(IEnumerable<string> ids)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (string id in ids)
        {
            if (!seen.Add(id)) return id;
        }

        return null;
    }
}
