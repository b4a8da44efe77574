using System;
using System.Collections.Generic;

namespace CamPower.Checks;

/// <summary>The one form of an identifier in words, of a rule or an inspection.</summary>
internal static class Identifier
{
    internal static string Of(string id, string parameter)
    {
        foreach (char c in Require.Name(id, parameter))
        {
            if (c is not ((>= 'a' and <= 'z') or (>= '0' and <= '9') or '-'))
            {
                throw new ArgumentException($"The identifier '{id}' may hold small letters, digits and hyphens only.", parameter);
            }
        }

        return id;
    }

    /// <summary>The first identifier that is there twice, or null.</summary>
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
