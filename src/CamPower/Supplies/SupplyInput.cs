using System;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>What a data sheet says of the side of a supply that takes power in.</summary>
/// <remarks>Immutable. Every part may be left out: null where the data sheet does not say.</remarks>
/// <example>
/// <code>
/// var input = new SupplyInput(new VoltageRange(ElectricPotential.FromVolts(90), ElectricPotential.FromVolts(264)),
///     efficiency: new ShareCurve&lt;Ratio>(
///         new(Ratio.FromPercent(20), Ratio.FromPercent(80)), new(Ratio.FromPercent(100), Ratio.FromPercent(88))));
/// Ratio? efficiency = input.EfficiencyAt(load: Ratio.FromPercent(60));   // 84 %
/// </code>
/// </example>
public sealed class SupplyInput
{
    // Nothing is loaded to ten times its rating for long, and a share of 0 would ask for an infinite input.
    private const double HighestLoad = 10, LeastShare = 1e-6;

    /// <summary>Describes an input.</summary>
    /// <param name="voltage">The voltage that it accepts, RMS if alternating. [V]</param>
    /// <param name="inrushCurrent">The peak current as it is switched on cold, above 0. [A]</param>
    /// <param name="efficiency">Power out over power in, above 0, against the load: the current over the rated current, from 0 to
    /// 10.</param>
    /// <param name="powerFactor">Power in over apparent power in, above 0, against the load: the current over the rated current, from 0 to
    /// 10.</param>
    /// <param name="inrushIntegral">I²t of the cold inrush, above 0; it needs <paramref name="inrushCurrent"/>. [A²·s]</param>
    /// <param name="warmInrushCurrent">The peak current as it is switched on again while its inrush limiter is still warm, above 0.
    /// [A]</param>
    /// <param name="leakageCurrent">Its current to protective earth in service, RMS, at least 0. [A]</param>
    /// <param name="standbyPower">Power in without any load, at least 0. [W]</param>
    /// <exception cref="ArgumentException">An <paramref name="inrushIntegral"/> without an <paramref name="inrushCurrent"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public SupplyInput(VoltageRange? voltage = null, ElectricCurrent? inrushCurrent = null, ShareCurve<Ratio>? efficiency = null,
        ShareCurve<Ratio>? powerFactor = null, JouleIntegral? inrushIntegral = null, ElectricCurrent? warmInrushCurrent = null,
        ElectricCurrent? leakageCurrent = null, Power? standbyPower = null)
    {
        if (inrushCurrent is ElectricCurrent peak) Require.Positive(peak.Amperes, nameof(inrushCurrent), "A");
        if (inrushIntegral is JouleIntegral integral) Require.Positive(integral.AmpereSquaredSeconds, nameof(inrushIntegral), "A²·s");
        if (inrushIntegral is not null && inrushCurrent is null)
        {
            throw new ArgumentException("The I²t of an inrush needs its peak current.", nameof(inrushIntegral));
        }

        if (warmInrushCurrent is ElectricCurrent warm) Require.Positive(warm.Amperes, nameof(warmInrushCurrent), "A");
        if (leakageCurrent is ElectricCurrent leakage) Require.NotNegative(leakage.Amperes, nameof(leakageCurrent), "A");
        StandbyWatts = standbyPower is Power standby ? Require.NotNegative((double)standby.Watts, nameof(standbyPower), "W") : null;
        Voltage = voltage;
        InrushCurrent = inrushCurrent;
        InrushIntegral = inrushIntegral;
        WarmInrushCurrent = warmInrushCurrent;
        LeakageCurrent = leakageCurrent;
        StandbyPower = standbyPower;
        Efficiency = efficiency?.Checked(0, HighestLoad, LeastShare, nameof(efficiency), string.Empty);
        PowerFactor = powerFactor?.Checked(0, HighestLoad, LeastShare, nameof(powerFactor), string.Empty);
    }

    /// <summary>The voltage that it accepts, RMS if alternating; null where the data sheet does not say. [V]</summary>
    public VoltageRange? Voltage { get; }

    /// <summary>The peak current as it is switched on cold; null where the data sheet does not say. [A]</summary>
    public ElectricCurrent? InrushCurrent { get; }

    /// <summary>I²t of the cold inrush; null where the data sheet does not say. [A²·s]</summary>
    public JouleIntegral? InrushIntegral { get; }

    /// <summary>The peak current as it is switched on again while its inrush limiter is still warm; null where the data sheet does not
    /// say. [A]</summary>
    public ElectricCurrent? WarmInrushCurrent { get; }

    /// <summary>Its current to protective earth in service, RMS; null where the data sheet does not say. [A]</summary>
    public ElectricCurrent? LeakageCurrent { get; }

    /// <summary>Power in without any load; null where the data sheet does not say. [W]</summary>
    public Power? StandbyPower { get; }

    internal double? StandbyWatts { get; }

    /// <summary>Power out over power in against the load, as a share of the rated current; null where the data sheet does not
    /// say.</summary>
    public ShareCurve<Ratio>? Efficiency { get; }

    /// <summary>Power in over apparent power in against the load, as a share of the rated current; null where the data sheet does not
    /// say.</summary>
    public ShareCurve<Ratio>? PowerFactor { get; }

    /// <summary>Power out over power in at a load; null where the data sheet does not say. [1]</summary>
    /// <param name="load">Current over rated current, at least 0. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="load"/> is negative or not finite.</exception>
    public Ratio? EfficiencyAt(Ratio load) => At(Efficiency, load);

    /// <summary>Power in over apparent power in at a load; null where the data sheet does not say. [1]</summary>
    /// <param name="load">Current over rated current, at least 0. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="load"/> is negative or not finite.</exception>
    public Ratio? PowerFactorAt(Ratio load) => At(PowerFactor, load);

    /// <summary>A line voltage against the highest that it accepts; a judgment of nothing where the data sheet does not say.</summary>
    internal Judgment Highest(double lineVolts) => Voltage is VoltageRange range
        ? Judgment.AtMost(lineVolts, range.HighestVolts, range.HighestVolts, v => ElectricPotential.FromVolts(v)) : default;

    /// <summary>A line voltage against the lowest that it accepts; a judgment of nothing where the data sheet does not say.</summary>
    internal Judgment Lowest(double lineVolts) => Voltage is VoltageRange range
        ? Judgment.AtLeast(lineVolts, range.LowestVolts, range.LowestVolts, v => ElectricPotential.FromVolts(v)) : default;

    /// <summary>What is known of it, in the invariant culture; never throws.</summary>
    public override string ToString() => string.Join(", ", new[]
    {
        Voltage?.ToString() ?? "input of unknown voltage",
        InrushCurrent is ElectricCurrent peak ? FormattableString.Invariant($"inrush {peak.Amperes:G6} A") : null,
        WarmInrushCurrent is ElectricCurrent warm ? FormattableString.Invariant($"warm inrush {warm.Amperes:G6} A") : null,
        LeakageCurrent is ElectricCurrent leakage ? FormattableString.Invariant($"leakage {leakage.Milliamperes:G6} mA") : null,
        StandbyWatts is double standby ? FormattableString.Invariant($"standby {standby:G6} W") : null,
        Efficiency is null ? null : $"efficiency {Efficiency}",
        PowerFactor is null ? null : $"power factor {PowerFactor}",
    }.Where(part => part is not null));

    private static Ratio? At(ShareCurve<Ratio>? curve, Ratio load)
    {
        Require.NotNegative(load.DecimalFractions, nameof(load), string.Empty);
        return curve?.ShareAt(load);
    }
}
