using System;
using System.Collections.Generic;

namespace CamPower.Files.Building;

/// <summary>What the core's parameters are called in a site file.</summary>
internal static class CoreWords
{
    private static readonly Dictionary<string, string> Members = new(StringComparer.Ordinal)
    {
        ["oneWayLength"] = "length",
        ["loopResistance"] = "resistance",
        ["limit"] = "outputLimit",
        ["number"] = "output",
        ["count"] = "wires",
        ["dcInput"] = "dc",
    };

    /// <summary>The member for a parameter; the same word for most.</summary>
    /// <param name="parameter">The parameter.</param>
    /// <param name="own">What parameters are called here, otherwise than elsewhere.</param>
    internal static string MemberFor(string? parameter, params (string Parameter, string Member)[] own)
    {
        foreach ((string from, string to) in own)
        {
            if (string.Equals(from, parameter, StringComparison.Ordinal)) return to;
        }

        return Members.TryGetValue(parameter ?? string.Empty, out string? member) ? member : parameter ?? string.Empty;
    }

    /// <summary>The message alone, in the words of the file, without what the framework adds.</summary>
    internal static string MessageOf(ArgumentException e, params (string Parameter, string Member)[] own)
    {
        int tail = e.Message.IndexOf(" (Parameter '", StringComparison.Ordinal);
        string message = (tail < 0 ? e.Message : e.Message[..tail]).TrimEnd('.');
        bool namesParameter = e.ParamName is not null && message.StartsWith(e.ParamName + " ", StringComparison.Ordinal);
        return namesParameter ? MemberFor(e.ParamName, own) + message[e.ParamName!.Length..] : message;
    }
}
