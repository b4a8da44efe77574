using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Globalization;
using System.Linq;

namespace CamPower;

/// <summary>The one guard for impossible input: names the parameter, the value with its unit and the range.</summary>
internal static class Require
{
    /// <summary>From 1 nV to 1 MV: the square of a source voltage neither vanishes nor overflows. [V]</summary>
    internal const double LeastSourceVolts = 1e-9, MostSourceVolts = 1e6;

    internal static double Positive(double value, string parameter, string unit) =>
        IsFinite(value) && value > 0 ? value : throw OutOfRange(value, parameter, unit, "above 0");

    internal static double NotNegative(double value, string parameter, string unit) =>
        IsFinite(value) && value >= 0 ? value : throw OutOfRange(value, parameter, unit, "at least 0");

    internal static double Finite(double value, string parameter, string unit) =>
        IsFinite(value) ? value : throw OutOfRange(value, parameter, unit, "finite");

    internal static double Within(double value, double low, double high, string parameter, string unit) =>
        value >= low && value <= high
            ? value
            : throw OutOfRange(value, parameter, unit, unit.Length == 0
                ? FormattableString.Invariant($"from {low} to {high}")
                : FormattableString.Invariant($"from {low} {unit} to {high}"));

    /// <summary>A source voltage within its range.</summary>
    internal static double SourceVolts(double value, string parameter) =>
        Within(value, LeastSourceVolts, MostSourceVolts, parameter, "V");

    /// <summary>A value that its enumeration names.</summary>
    internal static T Known<T>(T value, string parameter) where T : struct, Enum
    {
#if NET
        bool isKnown = Enum.IsDefined(value);
        string[] names = isKnown ? [] : Enum.GetNames<T>();
#else
        bool isKnown = Enum.IsDefined(typeof(T), value);
        string[] names = isKnown ? [] : Enum.GetNames(typeof(T));
#endif
        return isKnown
            ? value
            : throw new ArgumentOutOfRangeException(parameter, value, $"{parameter} must be one of {string.Join(", ", names)}.");
    }

    internal static T NotNull<T>(T? value, string parameter) where T : class =>
        value ?? throw new ArgumentNullException(parameter);

    /// <summary>A copy of the items that cannot be changed, none of them null.</summary>
    internal static ReadOnlyCollection<T> Items<T>(IEnumerable<T> items, string parameter) where T : class =>
        Array.AsReadOnly([.. NotNull(items, parameter).Select(item => NotNull(item, parameter))]);

    internal static string Name(string? value, string parameter)
    {
        if (value is null) throw new ArgumentNullException(parameter);
        return string.IsNullOrWhiteSpace(value)
            ? throw new ArgumentException("The name must not be empty.", parameter)
            : value;
    }

    /// <summary>The exception itself, for a range that is not one of the above.</summary>
    internal static ArgumentOutOfRangeException OutOfRange(double value, string parameter, string unit, string range)
    {
        // Text, so that the framework does not print the number in the culture of the thread.
        string shown = unit.Length == 0 ? Text(value) : Text(value) + " " + unit;
        string wanted = unit.Length == 0 ? range : range + " " + unit;
        return new ArgumentOutOfRangeException(parameter, shown, $"{parameter} must be {wanted}, but is {shown}.");
    }

    private static bool IsFinite(double value) => !double.IsNaN(value) && !double.IsInfinity(value);

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
