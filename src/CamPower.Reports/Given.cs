using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Linq;

namespace CamPower.Reports;

/// <summary>Refuses what a caller cannot have meant.</summary>
internal static class Given
{
    internal static T NotNull<T>([NotNull] T? value, string parameter)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(value, parameter);
        return value;
    }

    /// <summary>A copy of what was given, none of it null.</summary>
    internal static IReadOnlyList<T> Items<T>([NotNull] IEnumerable<T>? items, string parameter)
        where T : class => [.. NotNull(items, parameter).Select(item => NotNull(item, parameter))];

    internal static string Id(string value, string parameter)
    {
        NotNull(value, parameter);
        bool isName = value.Length > 0 && char.IsAsciiLetter(value[0]) && value.All(c => char.IsAsciiLetterOrDigit(c) || c == '-');
        return isName
            ? value
            : throw new ArgumentException($"\"{value}\" is no id: it takes a letter first, then letters, digits and hyphens.", parameter);
    }
}
