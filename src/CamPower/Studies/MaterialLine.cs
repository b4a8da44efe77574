using System;
using System.Globalization;

namespace CamPower;

/// <summary>A line of a bill of materials: an item and how much of it.</summary>
/// <remarks>Immutable. Of a difference the quantity is negative where less is needed.</remarks>
/// <example><code>foreach (MaterialLine line in site.ListMaterial().Lines) Console.WriteLine(line);</code></example>
public sealed class MaterialLine
{
    internal MaterialLine(string kind, string item, double quantity, string unit, double cost)
    {
        Kind = kind;
        Item = item;
        Quantity = quantity;
        Unit = unit;
        Cost = cost;
    }

    /// <summary>What kind of item it is: "cable", "joint", "connector", "protective device", "spare fuse", "box", "adapter" or
    /// "battery".</summary>
    public string Kind { get; }

    /// <summary>Its name.</summary>
    public string Item { get; }

    /// <summary>How much of it, in <see cref="Unit"/>.</summary>
    public double Quantity { get; }

    /// <summary>"m" of cable, else "pieces".</summary>
    public string Unit { get; }

    /// <summary>What all of it costs, in the unit of the price list, without work.</summary>
    public double Cost { get; }

    /// <summary>Quantity and item in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        string much = Math.Abs(Quantity).ToString("0.##", CultureInfo.InvariantCulture);
        if (Quantity < 0) return IsLength ? $"{much} m less of {Item} ({Kind})" : $"{much} less of {Item} ({Kind})";
        return $"{much} {(IsLength ? "m of" : "×")} {Item} ({Kind})";
    }

    private bool IsLength => string.Equals(Unit, MaterialList.Meters, StringComparison.Ordinal);
}
