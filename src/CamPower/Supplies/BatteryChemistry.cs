using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;
using static CamPower.Supplies.BatteryConstants;

namespace CamPower;

/// <summary>How the cells of one kind of battery behave: voltage and resistance by charge, capacity by temperature and current.</summary>
/// <remarks>Immutable. Every voltage is that of one cell. Use the figures of the data sheet where you have it.</remarks>
/// <example>
/// <code>
/// ElectricPotential atRest = BatteryChemistry.ValveRegulatedLeadAcid.OpenCircuitAt(Ratio.FromPercent(50));   // 2.04 V a cell
/// </code>
/// </example>
public sealed class BatteryChemistry
{
    private readonly PiecewiseLinear _volts, _underLoad, _resistance;
    private readonly double _floatVolts, _floatVoltsPerKelvin;

    /// <summary>Describes a chemistry.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <param name="charge">A cell at rest, from empty to full, in rising charge. The voltage never falls as the charge rises.</param>
    /// <param name="capacity">Share of the rated capacity by temperature, above 0 and at most 1. [1]</param>
    /// <param name="resistance">Resistance by temperature, over that at 25 °C, above 0. [1]</param>
    /// <param name="rateExponent">Exponent of Peukert's law, from 1 to 2; 1 where the capacity does not depend on the current. [1]</param>
    /// <param name="cutOff">Voltage under load at which the discharge must end, above 0. [V]</param>
    /// <param name="floating">Float voltage at 25 °C, above 0. [V]</param>
    /// <param name="floatingPerKelvin">Change of the float voltage with each kelvin above 25 °C, from -1 V to 0. [V]</param>
    /// <param name="chargeFactor">Charge put in over charge taken out, from 1 to 2. [1]</param>
    /// <param name="coldestCharging">Lowest temperature at which it may be charged; null where it is not stated.</param>
    /// <param name="lastingResistance">Resistance under a load of hours over that of the data sheet, which is measured in a moment, from 1
    /// to 10. [1]</param>
    /// <param name="highestCharging">Voltage of a cell at 25 °C above which it must not be charged, above 0; null where it is not stated.
    /// [V]</param>
    /// <param name="highestChargingRate">The largest charging current in amperes over the capacity in ampere-hours, above 0; 0.3 where it
    /// is "0.3 C"; null where it is not stated. [1/h]</param>
    /// <param name="hottestCharging">Highest temperature at which it may be charged; null where it is not stated.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, the points do not rise or do not run from 0 to 1, or the voltage falls as the
    /// charge rises.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public BatteryChemistry(string name, Citation source, IEnumerable<BatteryChargePoint> charge, ShareCurve<Temperature> capacity,
        ShareCurve<Temperature> resistance, double rateExponent, ElectricPotential cutOff, ElectricPotential floating,
        ElectricPotential floatingPerKelvin, double chargeFactor, Temperature? coldestCharging = null, double lastingResistance = 1,
        ElectricPotential? highestCharging = null, double? highestChargingRate = null, Temperature? hottestCharging = null)
    {
        Name = Require.Name(name, nameof(name));
        Source = Require.NotNull(source, nameof(source));
        Charge = Require.Items(charge, nameof(charge));
        Capacity = Require.NotNull(capacity, nameof(capacity)).AboveZero(nameof(capacity));
        foreach (SharePoint<Temperature> point in capacity.Points) Require.Within(point.ShareOfWhole, 0, 1, nameof(capacity), "");
        Resistance = Require.NotNull(resistance, nameof(resistance)).AboveZero(nameof(resistance));
        _volts = new PiecewiseLinear(Charge.Select(p => p.ChargeShare), Charge.Select(p => p.CellVolts), nameof(charge));
        _underLoad = new PiecewiseLinear(
            Charge.Select(p => p.ChargeShare), Charge.Select(p => p.CellVolts - p.PolarizationVolts), nameof(charge));
        _resistance = new PiecewiseLinear(Charge.Select(p => p.ChargeShare), Charge.Select(p => p.ResistanceFactor), nameof(charge));
        if (_volts.Lowest > 0 || _volts.Highest < 1) throw new ArgumentException("The points must run from empty to full.", nameof(charge));
        if (Charge.Zip(Charge.Skip(1), IsRising).Contains(false))
        {
            throw new ArgumentException("The voltage may not fall as the charge rises.", nameof(charge));
        }

        RateExponent = Require.Within(rateExponent, 1, 2, nameof(rateExponent), "");
        CutOffVolts = Require.Positive(cutOff.Volts, nameof(cutOff), "V");
        _floatVolts = Require.Positive(floating.Volts, nameof(floating), "V");
        _floatVoltsPerKelvin = Require.Within(floatingPerKelvin.Volts, -1, 0, nameof(floatingPerKelvin), "V");
        CutOff = cutOff;
        Floating = floating;
        FloatingPerKelvin = floatingPerKelvin;
        ChargeFactor = Require.Within(chargeFactor, 1, 2, nameof(chargeFactor), "");
        ColdestCharging = coldestCharging;
        ColdestChargingCelsius = coldestCharging is Temperature coldest
            ? Require.Finite(Celsius.Of(coldest), nameof(coldestCharging), "°C")
            : double.NegativeInfinity;
        HottestCharging = hottestCharging;
        HottestChargingCelsius = hottestCharging is Temperature hottest
            ? Require.Finite(Celsius.Of(hottest), nameof(hottestCharging), "°C")
            : double.PositiveInfinity;
        LastingResistance = Require.Within(lastingResistance, 1, 10, nameof(lastingResistance), "");
        if (highestCharging is ElectricPotential highest) Require.Positive(highest.Volts, nameof(highestCharging), "V");
        if (highestChargingRate is double rate) Require.Positive(rate, nameof(highestChargingRate), "1/h");
        HighestCharging = highestCharging;
        HighestChargingRate = highestChargingRate;
    }

    /// <summary>Valve-regulated lead-acid: sealed, with absorbed glass mat or gel.</summary>
    /// <remarks>Typical figures from memory. Capacity by temperature is that of <see cref="Sources.Ieee485Temperature"/>; at -20 °C it is
    /// common practice, no source. At its rated current a battery ends at 1.75 V a cell, where its rated capacity is given.</remarks>
    public static BatteryChemistry ValveRegulatedLeadAcid { get; } = new("valve-regulated lead-acid", Sources.LeadAcidBattery,
        [
            LeadAcidCell(0, 2.5, LeadAcidLostWhenEmpty.Value), LeadAcidCell(10, 2.05, LeadAcidLostNearlyEmpty.Value),
            LeadAcidCell(20, 1.6, LeadAcidLostAtFifth.Value), LeadAcidCell(50, 1.2, LeadAcidLost.Value),
            LeadAcidCell(100, 1, LeadAcidLost.Value),
        ],
        new ShareCurve<Temperature>(At(-20, 0.45), At(-3.9, 1 / 1.52), At(-1.1, 1 / 1.43), At(1.7, 1 / 1.35), At(4.4, 1 / 1.3),
            At(7.2, 1 / 1.25), At(12.8, 1 / 1.15), At(15.6, 1 / 1.11), At(18.3, 1 / 1.08), At(21.1, 1 / 1.04), At(25, 1), At(50, 1))
            .WithSource(Sources.Ieee485Temperature),
        new ShareCurve<Temperature>(At(-20, 2), At(0, 1.3), At(25, 1), At(50, 1)),
        LeadAcidRateExponent.Value, Volts(LeadAcidCutOff), Volts(LeadAcidFloat), Volts(LeadAcidFloatPerKelvin), LeadAcidChargeFactor.Value,
        lastingResistance: LeadAcidLastingResistance.Value, highestCharging: Volts(LeadAcidHighestCharging),
        highestChargingRate: LeadAcidHighestChargingRate.Value);

    /// <summary>Lithium iron phosphate, with its own battery management.</summary>
    /// <remarks>Typical figures from memory. It must not be charged below 0 °C or above 45 °C.</remarks>
    public static BatteryChemistry LithiumIronPhosphate { get; } = new("lithium iron phosphate", Sources.LithiumIronPhosphateBattery,
        [
            Cell(0, 2.5, 1.5), Cell(5, 3.0, 1.2), Cell(10, 3.15, 1.1), Cell(20, 3.22, 1), Cell(50, 3.28, 1), Cell(90, 3.32, 1),
            Cell(100, 3.4, 1),
        ],
        new ShareCurve<Temperature>(At(-20, 0.6), At(0, 0.85), At(25, 1), At(55, 1)),
        new ShareCurve<Temperature>(At(-20, 4), At(0, 2), At(25, 1), At(55, 1)),
        LithiumRateExponent.Value, Volts(LithiumCutOff), Volts(LithiumFloat), ElectricPotential.Zero, LithiumChargeFactor.Value,
        Temperature.FromDegreesCelsius(LithiumColdestCharging.Value), highestCharging: Volts(LithiumHighestCharging),
        highestChargingRate: LithiumHighestChargingRate.Value,
        hottestCharging: Temperature.FromDegreesCelsius(LithiumHottestCharging.Value));

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Where the numbers come from.</summary>
    public Citation Source { get; }

    /// <summary>A cell at rest, from empty to full.</summary>
    public IReadOnlyList<BatteryChargePoint> Charge { get; }

    /// <summary>Share of the rated capacity by temperature. [1]</summary>
    public ShareCurve<Temperature> Capacity { get; }

    /// <summary>Resistance by temperature, over that at 25 °C. [1]</summary>
    public ShareCurve<Temperature> Resistance { get; }

    /// <summary>Exponent of Peukert's law. [1]</summary>
    public double RateExponent { get; }

    /// <summary>Voltage of a cell under load at which the discharge must end. [V]</summary>
    public ElectricPotential CutOff { get; }

    /// <summary>Float voltage of a cell at 25 °C. [V]</summary>
    public ElectricPotential Floating { get; }

    /// <summary>Change of the float voltage of a cell with each kelvin above 25 °C. [V]</summary>
    public ElectricPotential FloatingPerKelvin { get; }

    /// <summary>Charge put in over charge taken out. [1]</summary>
    public double ChargeFactor { get; }

    /// <summary>Lowest temperature at which it may be charged; null where it is not stated.</summary>
    public Temperature? ColdestCharging { get; }

    /// <summary>Highest temperature at which it may be charged; null where it is not stated.</summary>
    public Temperature? HottestCharging { get; }

    /// <summary>Resistance under a load of hours over that of the data sheet. [1]</summary>
    public double LastingResistance { get; }

    /// <summary>Voltage of a cell at 25 °C above which it must not be charged; null where it is not stated. [V]</summary>
    public ElectricPotential? HighestCharging { get; }

    /// <summary>The largest charging current in amperes over the capacity in ampere-hours; null where it is not stated. [1/h]</summary>
    public double? HighestChargingRate { get; }

    /// <summary>Voltage of one cell at rest. [V]</summary>
    /// <param name="charge">State of charge, from 0 to 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="charge"/> is outside that range.</exception>
    public ElectricPotential OpenCircuitAt(Ratio charge) =>
        ElectricPotential.FromVolts(CellVoltsAt(Require.Within(charge.DecimalFractions, 0, 1, nameof(charge), "")));

    /// <summary>Float voltage of one cell. [V]</summary>
    /// <param name="at">Temperature of the battery, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="at"/> is not finite.</exception>
    public ElectricPotential FloatAt(Temperature at) => ElectricPotential.FromVolts(
        _floatVolts + (_floatVoltsPerKelvin * (Require.Finite(Celsius.Of(at), nameof(at), "°C") - ReferenceTemperature.Value)));

    /// <summary>Name; never throws.</summary>
    public override string ToString() => Name;

    internal double CutOffVolts { get; }

    internal double ColdestChargingCelsius { get; }

    internal double HottestChargingCelsius { get; }

    /// <summary>Where voltage and resistance have a kink, as a state of charge. [1]</summary>
    internal IEnumerable<double> Kinks => Charge.Select(p => p.ChargeShare);

    internal double CellVoltsAt(double charge) => _volts.At(charge)!.Value;

    /// <summary>Voltage of a cell under load, the drop in its resistance left out. [V]</summary>
    internal double CellVoltsUnderLoad(double charge) => _underLoad.At(charge)!.Value;

    internal double ResistanceAtCharge(double charge) => _resistance.At(charge)!.Value;

    /// <summary>The ends of what its resistance is multiplied by, over charge and temperature; at the end of the curve beyond it.
    /// [1]</summary>
    internal double LeastResistance(double hottestCelsius) => Charge.Min(p => p.ResistanceFactor) * ResistanceNear(hottestCelsius);

    /// <inheritdoc cref="LeastResistance"/>
    internal double GreatestResistance(double coldestCelsius) => Charge.Max(p => p.ResistanceFactor) * ResistanceNear(coldestCelsius);

    /// <summary>Voltage above which a cell must not be charged, compensated for its temperature as its float voltage; null where it is not
    /// stated. [V]</summary>
    internal double? HighestChargingVolts(double celsius) => HighestCharging is ElectricPotential highest
        ? highest.Volts + (_floatVoltsPerKelvin * (celsius - ReferenceTemperature.Value))
        : null;

    /// <summary>What a temperature multiplies its resistance by; at the end of the curve beyond it. [1]</summary>
    internal double ResistanceNear(double celsius) =>
        Resistance.ShareAt(Math.Min(Math.Max(celsius, Resistance.Lowest), Resistance.Highest))!.Value;

    // At rest and under load.
    private static bool IsRising(BatteryChargePoint low, BatteryChargePoint high) => high.CellVolts >= low.CellVolts
        && high.CellVolts - high.PolarizationVolts >= low.CellVolts - low.PolarizationVolts;

    // Straight between empty and full: the density of the acid falls with the charge.
    private static BatteryChargePoint LeadAcidCell(double percent, double resistance, double lost) => new(Ratio.FromPercent(percent),
        ElectricPotential.FromVolts(LeadAcidEmpty.Value + (percent / 100 * (LeadAcidFull.Value - LeadAcidEmpty.Value))),
        Ratio.FromDecimalFractions(resistance), ElectricPotential.FromVolts(lost));

    private static ElectricPotential Volts(CitedValue value) => ElectricPotential.FromVolts(value.Value);

    private static BatteryChargePoint Cell(double percent, double volts, double resistance) =>
        new(Ratio.FromPercent(percent), ElectricPotential.FromVolts(volts), Ratio.FromDecimalFractions(resistance));

    private static SharePoint<Temperature> At(double celsius, double share) =>
        new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(share));
}
