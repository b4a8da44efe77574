using System;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>Derating of a supply: the part of its rating that is left, by air temperature, input voltage and altitude.</summary>
/// <remarks>
/// Immutable. The share by ambient and the share by input voltage are multiplied, because they have different causes: heat, and current on
/// the primary side. Altitude counts as warmer air, see <see cref="AltitudeDerating"/>. It does not lower the minimum temperature. This is
/// common practice, no source: if the data sheet says something else, use the data sheet. Outside a curve the supply is not rated to run:
/// the share there is 0. What the data sheet does not state derates nothing.
/// </remarks>
/// <example>
/// <code>
/// Ratio warm = Derating.GenericEnclosed.ShareAt(Temperature.FromDegreesCelsius(60));                                        // 75 %
/// Ratio high = Derating.GenericEnclosed.ShareAt(Temperature.FromDegreesCelsius(60), altitude: Length.FromMeters(3000));   // 62.5 %
/// </code>
/// </example>
public sealed class Derating
{
    /// <summary>States a derating.</summary>
    /// <param name="ambient">The share, at most 1, by the temperature of the air around the supply, from absolute zero to 1000 °C.</param>
    /// <param name="lineVoltage">The share, at most 1, by the voltage at the input, from 1 nV to 1 MV, over the whole range of the input;
    /// null where it makes no difference.</param>
    /// <param name="altitude">What altitude adds to the ambient; null where the data sheet does not say.</param>
    /// <exception cref="ArgumentNullException"><paramref name="ambient"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A point is outside its range.</exception>
    public Derating(ShareCurve<Temperature> ambient, ShareCurve<ElectricPotential>? lineVoltage = null, AltitudeDerating? altitude = null)
    {
        Ambient = Require.NotNull(ambient, nameof(ambient))
            .Checked(Surroundings.AbsoluteZero, Surroundings.Hottest, leastShare: 0, nameof(ambient), "°C");
        foreach (SharePoint<ElectricPotential> point in lineVoltage?.Points ?? []) Require.SourceVolts(point.Number, nameof(lineVoltage));
        LineVoltage = lineVoltage?.Checked(double.NegativeInfinity, double.PositiveInfinity, leastShare: 0, nameof(lineVoltage), "V");
        Altitude = altitude;
    }

    /// <summary>A generic enclosed switch-mode supply: full rating from -20 °C to 50 °C, then 2.5 % less per kelvin, to 70 °C;
    /// <see cref="AltitudeDerating.Generic"/>.</summary>
    /// <remarks>Common practice, no source: if the data sheet says something else, use the data sheet.</remarks>
    public static Derating GenericEnclosed { get; } = new(
        new ShareCurve<Temperature>(
            Point(SupplyConstants.GenericFrom, 100),
            Point(SupplyConstants.GenericFullTo, 100),
            Point(SupplyConstants.GenericTo, SupplyConstants.GenericShareAtHighest.Value)),
        altitude: AltitudeDerating.Generic);

    /// <summary>The share by the temperature of the air around the supply.</summary>
    public ShareCurve<Temperature> Ambient { get; }

    /// <summary>The share by the voltage at the input, or null where it makes no difference.</summary>
    public ShareCurve<ElectricPotential>? LineVoltage { get; }

    /// <summary>What altitude adds to the ambient, or null where the data sheet does not say.</summary>
    public AltitudeDerating? Altitude { get; }

    /// <summary>The share of the rating that is left; 0 outside a curve, where the supply is not rated to run. [1]</summary>
    /// <param name="ambient">Temperature of the air around the supply, finite.</param>
    /// <param name="lineVoltage">Voltage at the input, from 1 nV to 1 MV; null for the nominal one, at which nothing is derated.
    /// [V]</param>
    /// <param name="altitude">Height above the sea, from -500 m to 9000 m; null for sea level. [m]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Ratio ShareAt(Temperature ambient, ElectricPotential? lineVoltage = null, Length? altitude = null) =>
        Ratio.FromDecimalFractions(ShareAt(
        Require.Finite(Celsius.Of(ambient), nameof(ambient), "°C"),
        lineVoltage is ElectricPotential line ? Require.SourceVolts(line.Volts, nameof(lineVoltage)) : null,
        altitude is Length height ? AltitudeDerating.MetersOf(height, nameof(altitude)) : 0));

    /// <summary>What it depends on, in the invariant culture; never throws.</summary>
    public override string ToString() =>
        string.Join("; ", new object?[] { Ambient, LineVoltage, Altitude }.Where(part => part is not null));

    /// <inheritdoc cref="ShareAt(Temperature, ElectricPotential?, Length?)"/>
    internal double ShareAt(double celsius, double? lineVolts, double altitudeMeters)
    {
        if (celsius < LowestCelsius) return 0;
        return (Ambient.ShareAt(celsius + (Altitude?.KelvinsAt(altitudeMeters) ?? 0)) ?? 0) * ShareByLine(lineVolts);
    }

    /// <summary>The largest share at a temperature and anywhere above it: what warms the air may also bring a supply into its range.
    /// [1]</summary>
    internal double LargestShareFrom(double celsius, double? lineVolts, double altitudeMeters)
    {
        double from = Math.Max(celsius, LowestCelsius), counted = from + (Altitude?.KelvinsAt(altitudeMeters) ?? 0);
        double largest = Ambient.Points.Where(p => p.Number >= counted).Select(p => p.ShareOfWhole).Append(Ambient.ShareAt(counted) ?? 0)
            .Max();
        return largest * ShareByLine(lineVolts);
    }

    /// <summary>The coldest air in which the supply is rated to run: thin air does not warm it. [°C]</summary>
    internal double LowestCelsius => Ambient.Lowest;

    /// <summary>The hottest air in which the supply is rated to run. [°C]</summary>
    internal double HighestCelsiusAt(double altitudeMeters) => Ambient.Highest - (Altitude?.KelvinsAt(altitudeMeters) ?? 0);

    private double ShareByLine(double? lineVolts) =>
        lineVolts is double volts && LineVoltage is not null ? LineVoltage.ShareAt(volts) ?? 0 : 1;

    private static SharePoint<Temperature> Point(CitedValue ambient, double percent) =>
        new(Temperature.FromDegreesCelsius(ambient.Value), Ratio.FromPercent(percent));
}
