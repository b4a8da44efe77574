using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Tolerance;

/// <summary>A voltage, current or resistance of a site: what is expected, the worst cases, and which part costs how much.</summary>
/// <remarks>Immutable. Every quantity is of one kind: <see cref="ElectricPotential"/>, <see cref="ElectricCurrent"/> or
/// <see cref="ElectricResistance"/>. The lowest is 0 where the circuit has no operating point in its worst corner: the device is
/// dark.</remarks>
public sealed class UncertainValue
{
    private readonly Func<double, IQuantity> _quantityOf;

    internal UncertainValue(double? expected, double lowest, double highest, bool isProven, IReadOnlyList<UncertaintyShare> shares,
        double standard, Func<double, IQuantity> quantityOf)
    {
        _quantityOf = quantityOf;
        ExpectedValue = expected;
        LowestValue = lowest;
        HighestValue = highest;
        StandardValue = standard;
        IsProven = isProven;
        Shares = shares;
    }

    /// <summary>Whether the circuit has an operating point with every part as it is expected.</summary>
    public bool HasOperatingPoint => ExpectedValue is not null;

    /// <summary>The value with every part as it is expected. [V, A or Ω]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public IQuantity Expected => _quantityOf(ExpectedValue
        ?? throw new InvalidOperationException("There is no operating point with the expected parts. Ask HasOperatingPoint first."));

    /// <summary>The lowest value that the ranges allow. [V, A or Ω]</summary>
    public IQuantity Lowest => _quantityOf(LowestValue);

    /// <summary>The highest value that the ranges allow. [V, A or Ω]</summary>
    public IQuantity Highest => _quantityOf(HighestValue);

    /// <summary>Whether the lowest and the highest are values of a corner, proven to be the worst; otherwise they are bounds that no
    /// combination passes.</summary>
    /// <remarks>A corner is proven where more of each part moves the value one way only: all loads draw more at less voltage, and no return
    /// current divides between shields.</remarks>
    public bool IsProven { get; }

    /// <summary>The standard deviation, from the sensitivities, the parts being independent: <see cref="Sources.UncertaintyGuide"/>.
    /// [V, A or Ω]</summary>
    public IQuantity StandardUncertainty => _quantityOf(StandardValue);

    /// <summary>Every part that it depends on, the dearest first.</summary>
    public IReadOnlyList<UncertaintyShare> Shares { get; }

    internal double? ExpectedValue { get; }

    internal double LowestValue { get; }

    internal double HighestValue { get; }

    private double StandardValue { get; }

    /// <summary>Expected, lowest and highest in SI units, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{(ExpectedValue is double e ? e.ToString("G5", System.Globalization.CultureInfo.InvariantCulture) : "no operating point")}, ")
        + FormattableString.Invariant($"from {LowestValue:G5} to {HighestValue:G5}");

    /// <summary>Puts it together from the change with each part.</summary>
    /// <param name="parts">The parts of the site.</param>
    /// <param name="relevant">The places of those that count.</param>
    /// <param name="perUnit">The change of the value with each part of the site.</param>
    /// <param name="valueOf">The value at deviations, null without an operating point.</param>
    /// <param name="bounds">Lowest and highest, and whether they are corners that are proven.</param>
    /// <param name="quantityOf">The unit.</param>
    internal static UncertainValue Of(UncertainParts parts, int[] relevant, double[] perUnit, Func<double[], double?> valueOf,
        (double Lowest, double Highest, bool IsProven) bounds, Func<double, IQuantity> quantityOf)
    {
        double? expected = valueOf(parts.Expected);
        double variance = 0;
        var shares = new List<UncertaintyShare>();
        foreach (int place in relevant)
        {
            UncertainPart part = parts.All[place];
            double deviation = perUnit[place] * part.Range.StandardDeviation;
            variance += deviation * deviation;
            shares.Add(new UncertaintyShare(part, perUnit[place], CostOf(place, perUnit[place]), quantityOf));
        }

        return new(expected, bounds.Lowest, bounds.Highest, bounds.IsProven,
            [.. shares.OrderByDescending(s => s.CostValue)], Math.Sqrt(variance), quantityOf);

        double CostOf(int place, double slope)
        {
            if (expected is not double from) return 0;
            double[] x = (double[])parts.Expected.Clone();
            x[place] = slope < 0 ? parts.All[place].Range.High : parts.All[place].Range.Low;
            return Math.Max(0, from - (valueOf(x) ?? 0));
        }
    }
}
