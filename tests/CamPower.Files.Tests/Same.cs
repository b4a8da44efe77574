using System;
using System.Collections;
using System.Globalization;
using System.Linq;
using System.Reflection;
using UnitsNet;

namespace CamPower.Files.Tests;

/// <summary>Whether two objects are the same in every public property, quantities in number and unit, doubles in every bit.</summary>
internal static class Same
{
    internal static void Assert(object? expected, object? actual) => Xunit.Assert.Null(Difference(expected, actual, "it"));

    /// <summary>The first difference in words, or null.</summary>
    internal static string? Difference(object? expected, object? actual, string path)
    {
        if (expected is null || actual is null) return ReferenceEquals(expected, actual) ? null : $"{path}: {expected ?? "null"} and {actual ?? "null"}";
        if (expected.GetType() != actual.GetType()) return $"{path}: {expected.GetType()} and {actual.GetType()}";
        if (expected is IQuantity a && actual is IQuantity b) return a.Unit.Equals(b.Unit) && Text(a) == Text(b) ? null : $"{path}: {Text(a)} {a.Unit} and {Text(b)} {b.Unit}";
        if (IsPlain(expected)) return expected.Equals(actual) ? null : $"{path}: {expected} and {actual}";
        return expected is IEnumerable list ? Items(list, (IEnumerable)actual, path) : Members(expected, actual, path);
    }

    private static bool IsPlain(object value) =>
        value is string or double or int or bool or Enum or WireSize or ConductorMaterial or Stranding;

    private static string Text(IQuantity q) => q is Power p ? ((decimal)p.Value).ToString(CultureInfo.InvariantCulture) : ((double)q.Value).ToString("R", CultureInfo.InvariantCulture);

    private static string? Items(IEnumerable expected, IEnumerable actual, string path)
    {
        object?[] left = [.. expected.Cast<object?>()], right = [.. actual.Cast<object?>()];
        if (left.Length != right.Length) return $"{path}: {left.Length} and {right.Length} items";
        return left.Select((item, i) => Difference(item, right[i], $"{path}[{i}]")).FirstOrDefault(d => d is not null);
    }

    private static string? Members(object expected, object actual, string path) => expected.GetType()
        .GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(p => p.GetIndexParameters().Length == 0)
        .Select(p => Difference(ValueOf(p, expected), ValueOf(p, actual), $"{path}.{p.Name}"))
        .FirstOrDefault(d => d is not null);

    // A result without an operating point throws when its voltage is read: both must.
    private static object? ValueOf(PropertyInfo property, object owner)
    {
        try
        {
            return property.GetValue(owner);
        }
        catch (TargetInvocationException e)
        {
            return e.InnerException!.GetType().Name;
        }
    }
}
