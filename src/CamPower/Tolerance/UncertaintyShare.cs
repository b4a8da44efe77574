using System;
using UnitsNet;

namespace CamPower.Tolerance;

/// <summary>What one uncertain part of a site does to a voltage, a current or a resistance.</summary>
/// <remarks>Immutable.</remarks>
public sealed class UncertaintyShare
{
    private readonly UncertainPart _part;

    internal UncertaintyShare(UncertainPart part, double perUnit, double cost, Func<double, IQuantity> quantityOf)
    {
        _part = part;
        IsLowestAtHighEnd = perUnit < 0;
        CostValue = cost;
        Cost = quantityOf(cost);
        StandardUncertainty = quantityOf(Math.Abs(perUnit) * part.Range.StandardDeviation);
    }

    /// <summary>What is uncertain.</summary>
    public UncertainQuantity Quantity => _part.Quantity;

    /// <summary>What it is of: a box, an output, a cable type, a device, the junction at the end of a run, or "all cables".</summary>
    public string Name => _part.Name;

    /// <summary>How far it may be off.</summary>
    public UncertainRange Range => _part.Range;

    /// <summary>How far the value falls as this part alone goes from what is expected to its worse end. [V, A or Ω]</summary>
    public IQuantity Cost { get; }

    /// <summary>The standard deviation of the value that comes from this part alone: its sensitivity times the part's standard deviation.
    /// [V, A or Ω]</summary>
    public IQuantity StandardUncertainty { get; }

    /// <summary>Whether the lowest value has this part at its high end; otherwise at its low end.</summary>
    public bool IsLowestAtHighEnd { get; }

    /// <summary>The end of its range that makes the value lowest. [1, or K]</summary>
    public double EndOfLowest => IsLowestAtHighEnd ? Range.High : Range.Low;

    /// <summary>Part and cost in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Quantity} of {Name}: {CostValue:G3} at {EndOfLowest:G3}");

    internal double CostValue { get; }
}
