using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Planning;

/// <summary>Guards against impossible arguments.</summary>
internal static class Given
{
    internal static T NotNull<T>(T? value, string parameter) where T : class => value ?? throw new ArgumentNullException(parameter);

    internal static string Name(string? value, string parameter)
    {
        ArgumentNullException.ThrowIfNull(value, parameter);
        return value.Trim().Length > 0 ? value : throw new ArgumentException($"{parameter} must not be empty.", parameter);
    }

    internal static IReadOnlyList<T> Items<T>(IEnumerable<T> items, string parameter) where T : class
    {
        ArgumentNullException.ThrowIfNull(items, parameter);
        T[] all = [.. items];
        return all.Contains(null) ? throw new ArgumentNullException(parameter, "No item may be null.") : Array.AsReadOnly(all);
    }

    internal static double Within(double value, double lowest, double highest, string parameter, string unit) =>
        value >= lowest && value <= highest
            ? value
            : throw new ArgumentOutOfRangeException(parameter, value,
                FormattableString.Invariant($"{parameter} is {value} {unit}; it must be from {lowest} to {highest} {unit}."));
}
