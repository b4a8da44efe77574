using System.Globalization;
using UnitsNet;

namespace CamPower;

/// <summary>One value outside the range in which a model was held against anything: the answer may still be right, but no source confirms
/// it.</summary>
/// <remarks>Immutable.</remarks>
public sealed class ValidityBreach
{
    internal ValidityBreach(string what, Citation source, IQuantity? value = null, IQuantity? limit = null)
    {
        What = what;
        Source = source;
        Value = value;
        Limit = limit;
    }

    /// <summary>Name of the value that is outside its range.</summary>
    public string What { get; }

    /// <summary>The value, or null where it is no number that is outside.</summary>
    public IQuantity? Value { get; }

    /// <summary>The end of the range that it is beyond, of the same quantity, or null.</summary>
    public IQuantity? Limit { get; }

    /// <summary>Where the range comes from.</summary>
    public Citation Source { get; }

    /// <summary>What is outside, its value and the range's end, in the invariant culture; never throws.</summary>
    public override string ToString() => Value is null || Limit is null
        ? What
        : $"{What}: {Value.ToString("s4", CultureInfo.InvariantCulture)}; "
            + $"the calculation was checked {Ending(Value, Limit, Limit.ToString("s4", CultureInfo.InvariantCulture))}";

    private static string Ending(IQuantity value, IQuantity limit, string end) =>
        value.As(limit.Unit) < (double)limit.Value ? $"from {end} up" : $"up to {end}";
}
