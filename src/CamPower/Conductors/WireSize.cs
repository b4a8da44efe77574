using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>The size of a conductor, as the trade names it: a wire gauge, a cross-section or a diameter.</summary>
/// <remarks>
/// Ordered by area, smallest first. Two sizes are equal when they are the same size of the same series.
/// The default value is no size: it has no area, and nothing accepts it. Source of the gauge:
/// <see cref="Sources.AmericanWireGauge"/>. The standard sizes of each series: <see cref="Standard"/>.
/// </remarks>
/// <example>
/// <code>
/// WireSize eighteen = WireSize.Awg(18);                 // 0.823 mm²
/// WireSize twoOught = WireSize.Parse("2/0 AWG");
/// WireSize metric = WireSize.SquareMillimeters(1.5);
/// WireSize feeder = WireSize.Kcmil(250);
/// WireSize bare = WireSize.Diameter(0.8);               // printed as 0.8 mm wire
/// </code>
/// </example>
public readonly struct WireSize : IEquatable<WireSize>, IComparable<WireSize>
{
    private const int LargestAwg = -3, SmallestAwg = 44, Awg36 = 36, Awg36To4Ought = 39;
    private const string AwgSuffix = "AWG";

    // How a number is written after which, and the size that it makes.
    private static readonly (string Suffix, Func<double, WireSize> Make)[] Numbered =
        [("mm2", SquareMillimeters), ("mm²", SquareMillimeters), ("kcmil", Kcmil), ("MCM", Kcmil), ("mm wire", Diameter)];

    private readonly double _number;

    private WireSize(WireSizeSeries series, double number, double squareMeters)
    {
        Series = series;
        _number = number;
        SquareMeters = squareMeters;
    }

    /// <summary>The series that the size is named in.</summary>
    public WireSizeSeries Series { get; }

    /// <summary>Cross-section of the metal. [mm²]</summary>
    public Area Area => Area.FromSquareMillimeters(SquareMeters * 1e6);

    /// <summary>Diameter of the solid wire of this cross-section. [mm]</summary>
    public Length SolidDiameter => Length.FromMillimeters(2 * Math.Sqrt(SquareMeters / Math.PI) * 1000);

    internal double SquareMeters { get; }

    /// <summary>A size of the American wire gauge.</summary>
    /// <param name="gauge">From 44 (thin) to 1, 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="gauge"/> is outside that range.</exception>
    public static WireSize Awg(int gauge)
    {
        Require.Within(gauge, LargestAwg, SmallestAwg, nameof(gauge), AwgSuffix);
        double steps = (double)(Awg36 - gauge) / Awg36To4Ought;
        double diameter = ConductorConstants.Awg36Diameter.Value * 1e-3 * Math.Pow(ConductorConstants.AwgDiameterRatio.Value, steps);
        return new WireSize(WireSizeSeries.Awg, gauge, Math.PI / 4 * diameter * diameter);
    }

    /// <summary>A size by its nominal cross-section.</summary>
    /// <param name="area">Above 0. [mm²]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="area"/> is not above 0, or not finite.</exception>
    public static WireSize SquareMillimeters(double area) =>
        new(WireSizeSeries.SquareMillimeters, Require.Positive(area, nameof(area), "mm²"), area * 1e-6);

    /// <summary>A size by its cross-section in thousands of circular mils.</summary>
    /// <param name="area">Above 0. [kcmil]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="area"/> is not above 0, or not finite.</exception>
    public static WireSize Kcmil(double area) =>
        new(WireSizeSeries.Kcmil, Require.Positive(area, nameof(area), "kcmil"), area * ConductorConstants.KcmilArea.Value * 1e-6);

    /// <summary>A size by the diameter of the bare round wire.</summary>
    /// <param name="millimeters">Above 0. [mm]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="millimeters"/> is not above 0, or not finite.</exception>
    public static WireSize Diameter(double millimeters) =>
        new(WireSizeSeries.Diameter, Require.Positive(millimeters, nameof(millimeters), "mm"),
            Math.PI / 4 * millimeters * millimeters * 1e-6);

    /// <summary>Reads a size as people write it: "18 AWG", "2/0 AWG" or "00 AWG", "1.5 mm2", "1.5 mm²", "250 kcmil", "250 MCM", "0.8 mm
    /// wire".</summary>
    /// <param name="text">The text; case and spaces do not matter, a decimal point does.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text is no wire size.</exception>
    public static WireSize Parse(string text) => TryParse(Require.NotNull(text, nameof(text)), out WireSize size)
        ? size
        : throw new FormatException($"'{text}' is no wire size; write it like 18 AWG, 2/0 AWG, 1.5 mm2, 250 kcmil or 0.8 mm wire.");

    /// <summary>Reads a size as people write it, or says that the text is none.</summary>
    /// <param name="text">The text; case and spaces do not matter, a decimal point does.</param>
    /// <param name="size">The size, or the default value.</param>
    public static bool TryParse([NotNullWhen(true)] string? text, out WireSize size)
    {
        size = default;
        string trimmed = text?.Trim() ?? string.Empty;
        if (TryStripSuffix(trimmed, AwgSuffix, out string gaugeText)) return TryParseAwg(gaugeText, out size);
        foreach ((string suffix, Func<double, WireSize> make) in Numbered)
        {
            if (TryStripSuffix(trimmed, suffix, out string number)) return TryParseNumber(number, make, out size);
        }

        return false;
    }

    /// <summary>The standard sizes of a series, smallest first; none for <see cref="WireSizeSeries.None"/>.</summary>
    /// <param name="series">The series.</param>
    /// <remarks>
    /// American wire gauge: 44 to 4/0 (<see cref="Sources.AmericanWireGauge"/>). Square millimeters: IEC 60228, 0.5 to 1000
    /// (<see cref="Sources.Iec60228"/>). Kcmil: 250 to 2000 (<see cref="Sources.KcmilSizes"/>). Diameters: 0.02 to 5 mm
    /// (<see cref="Sources.WireDiameters"/>).
    /// </remarks>
    public static IReadOnlyList<WireSize> Standard(WireSizeSeries series) => StandardSizes.In(series);

    /// <summary>The next larger standard size of its own series, or null where there is none. It need not be a standard size
    /// itself.</summary>
    public WireSize? NextLarger() => StandardSizes.NextLarger(this);

    /// <summary>The next smaller standard size of its own series, or null where there is none. It need not be a standard size
    /// itself.</summary>
    public WireSize? NextSmaller() => StandardSizes.NextSmaller(this);

    /// <summary>The standard size of a series whose area differs least; of two equally near ones the larger.</summary>
    /// <param name="series">The series to choose from.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="series"/> has no sizes.</exception>
    /// <exception cref="InvalidOperationException">This is the default value: it has no area.</exception>
    /// <example><code>WireSize metric = WireSize.Awg(18).NearestIn(WireSizeSeries.SquareMillimeters);   // 0.75 mm2</code></example>
    public WireSize NearestIn(WireSizeSeries series) => SquareMeters > 0
        ? StandardSizes.NearestTo(this, series)
        : throw new InvalidOperationException("The default value of WireSize is no size: nothing is near it.");

    /// <inheritdoc/>
    public int CompareTo(WireSize other)
    {
        int byArea = SquareMeters.CompareTo(other.SquareMeters);
        return byArea != 0 ? byArea : Series.CompareTo(other.Series);
    }

    /// <inheritdoc/>
    public bool Equals(WireSize other) => Series == other.Series && _number.Equals(other._number);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is WireSize other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (_number.GetHashCode() * 31) + (int)Series;

    /// <summary>The size as the trade writes it, in the invariant culture: "18 AWG", "2/0 AWG", "1.5 mm2", "250 kcmil", "0.8 mm wire";
    /// never throws.</summary>
    public override string ToString() => Series switch
    {
        WireSizeSeries.Awg when _number <= 0 => FormattableString.Invariant($"{1 - _number}/0 AWG"),
        WireSizeSeries.Awg => FormattableString.Invariant($"{_number} AWG"),
        WireSizeSeries.SquareMillimeters => PlainNumber.Text(_number) + " mm2",
        WireSizeSeries.Kcmil => PlainNumber.Text(_number) + " kcmil",
        WireSizeSeries.Diameter => PlainNumber.Text(_number) + " mm wire",
        _ => "no size",
    };

    /// <summary>Whether both are the same size of the same series.</summary>
    public static bool operator ==(WireSize left, WireSize right) => left.Equals(right);

    /// <summary>Whether the two are not the same size of the same series.</summary>
    public static bool operator !=(WireSize left, WireSize right) => !left.Equals(right);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(WireSize left, WireSize right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(WireSize left, WireSize right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left is not larger.</summary>
    public static bool operator <=(WireSize left, WireSize right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left is not smaller.</summary>
    public static bool operator >=(WireSize left, WireSize right) => left.CompareTo(right) >= 0;

    private static bool TryStripSuffix(string text, string suffix, out string rest)
    {
        bool found = text.EndsWith(suffix, StringComparison.OrdinalIgnoreCase);
        rest = found ? text.Substring(0, text.Length - suffix.Length).TrimEnd() : text;
        return found;
    }

    private static bool TryParseAwg(string text, out WireSize size)
    {
        size = default;
        bool ought = text.EndsWith("/0", StringComparison.Ordinal);
        string digits = ought ? text.Substring(0, text.Length - 2) : text;
        if (!int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int number)) return false;

        // "0 AWG" is 1/0 and "0000 AWG" 4/0; "0/0" and anything above 4/0 are nothing.
        if (!ought && number == 0) (ought, number) = (true, digits.Length);
        bool known = ought ? number is >= 1 and <= 4 : number <= SmallestAwg;
        if (known) size = Awg(ought ? 1 - number : number);
        return known;
    }

    private static bool TryParseNumber(string text, Func<double, WireSize> make, out WireSize size)
    {
        size = default;
        bool known = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number)
            && number > 0 && !double.IsInfinity(number);
        if (known) size = make(number);
        return known;
    }
}
