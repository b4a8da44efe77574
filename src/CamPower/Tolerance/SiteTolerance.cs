using System;
using System.Collections.Generic;

namespace CamPower.Tolerance;

/// <summary>How uncertain each part of a site is.</summary>
/// <remarks>
/// Immutable. What a site states itself counts: the tolerance of a supply, the least and greatest resistance of a protective device. The
/// rest are usual ranges, most of them common practice with no source; put your own in their place. What is common to several parts is
/// common: all cables of a site have one temperature, and all lengths of one cable type come from one reel.
/// </remarks>
/// <example>
/// <code>
/// SiteTolerance tolerance = SiteTolerance.Standard
///     .With(UncertainQuantity.RunLength, UncertainRange.OfShare(Ratio.Zero, Ratio.FromPercent(10), UncertaintyShape.Uniform))
///     .With(UncertainQuantity.DeviceDraw, "gate camera",
///         UncertainRange.OfShare(Ratio.FromPercent(-3), Ratio.FromPercent(3), UncertaintyShape.Normal));
/// </code>
/// </example>
public sealed class SiteTolerance
{
    private readonly Dictionary<(UncertainQuantity Quantity, string? Name), UncertainRange> _stated;

    private SiteTolerance(Dictionary<(UncertainQuantity, string?), UncertainRange> stated) => _stated = stated;

    /// <summary>What the site states, and usual ranges for the rest.</summary>
    public static SiteTolerance Standard { get; } = new([]);

    /// <summary>The same with another range for every part of a quantity that has none of its own.</summary>
    /// <param name="quantity">What is uncertain.</param>
    /// <param name="range">Its range: of temperature for cables' temperature, of shares for the others.</param>
    /// <exception cref="ArgumentNullException"><paramref name="range"/> is null.</exception>
    /// <exception cref="ArgumentException">The range is of the other kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The quantity is none of those there are, or the range is outside what it can
    /// be: a protective device's from 0 to 1, a supply's above -1.</exception>
    public SiteTolerance With(UncertainQuantity quantity, UncertainRange range) =>
        WithStated(quantity, null, Require.NotNull(range, nameof(range)));

    /// <summary>The same with another range for one part.</summary>
    /// <param name="quantity">What is uncertain.</param>
    /// <param name="name">What it is of: the name of a box, cable, junction at the end of a run, or device; of an output
    /// "yard box output 3". Not empty.</param>
    /// <param name="range">Its range.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, or the range is of the other kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException">As in the other overload.</exception>
    public SiteTolerance With(UncertainQuantity quantity, string name, UncertainRange range) =>
        WithStated(quantity, Require.Name(name, nameof(name)), Require.NotNull(range, nameof(range)));

    /// <summary>How many ranges are stated; never throws.</summary>
    public override string ToString() =>
        _stated.Count == 0 ? "usual ranges" : FormattableString.Invariant($"usual ranges but for {_stated.Count}");

    /// <summary>The range of a part: its own, else that of its quantity, else the usual one.</summary>
    internal UncertainRange RangeOf(UncertainQuantity quantity, string name, UncertainRange usual) =>
        _stated.TryGetValue((quantity, name), out UncertainRange? own) || _stated.TryGetValue((quantity, null), out own) ? own : usual;

    private SiteTolerance WithStated(UncertainQuantity quantity, string? name, UncertainRange range)
    {
        Require.Known(quantity, nameof(quantity));
        if (range.IsInKelvins != (quantity == UncertainQuantity.CableTemperature))
        {
            throw new ArgumentException(
                range.IsInKelvins ? $"{quantity} needs a range of shares." : $"{quantity} needs a range of temperature.", nameof(range));
        }

        (double low, double high) = quantity switch
        {
            UncertainQuantity.ProtectionResistance => (0, 1),
            UncertainQuantity.SupplyVoltage or UncertainQuantity.ConductorResistance => (-0.99, double.MaxValue),
            _ => (double.MinValue, double.MaxValue),
        };
        Require.Within(range.Low, low, high, nameof(range), "");
        Require.Within(range.High, low, high, nameof(range), "");
        return new(new Dictionary<(UncertainQuantity, string?), UncertainRange>(_stated) { [(quantity, name)] = range });
    }
}
