using System.Globalization;
using UnitsNet;

namespace PlanService.Answers;

/// <summary>A value of whatever quantity a rule is about.</summary>
public sealed record QuantityAnswer
{
    /// <summary>Number and unit as text.</summary>
    public required string Text { get; init; }

    /// <summary>The number, in <see cref="Unit"/>, unrounded.</summary>
    public required double Number { get; init; }

    /// <summary>The unit, such as V, A, W, Ω, % or °C.</summary>
    public required string Unit { get; init; }

    internal static QuantityAnswer? Of(IQuantity? quantity) => quantity is null ? null : new QuantityAnswer
    {
        Text = Written.Text(quantity),
        Number = (double)quantity.Value,
        Unit = quantity.ToString("a", CultureInfo.InvariantCulture),
    };
}
