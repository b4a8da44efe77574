using System;
using UnitsNet;

namespace CamPower.Supplies;

/// <summary>A battery cell at one state of charge: its open-circuit voltage, and what it loses under load.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BatteryChargePoint
{
    // Under load a cell has some voltage left.
    private const double Least = 1e-3;

    /// <summary>States a point.</summary>
    /// <param name="charge">State of charge, from 0 to 1. [1]</param>
    /// <param name="openCircuit">Voltage of one cell at rest at 25 °C, above 0. [V]</param>
    /// <param name="resistance">Resistance over that of the full cell, above 0. [1]</param>
    /// <param name="polarization">Voltage of one cell lost under a load of hours, beside its resistance and whatever the current, from 0
    /// and below <paramref name="openCircuit"/>; null for none. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public BatteryChargePoint(Ratio charge, ElectricPotential openCircuit, Ratio resistance, ElectricPotential? polarization = null)
    {
        ChargeShare = Require.Within(charge.DecimalFractions, 0, 1, nameof(charge), "");
        CellVolts = Require.Positive(openCircuit.Volts, nameof(openCircuit), "V");
        ResistanceFactor = Require.Positive(resistance.DecimalFractions, nameof(resistance), "");
        PolarizationVolts = polarization is ElectricPotential lost
            ? Require.Within(lost.Volts, 0, Math.Max(0, CellVolts - Least), nameof(polarization), "V")
            : 0;
        Charge = charge;
        OpenCircuit = openCircuit;
        Resistance = resistance;
        Polarization = polarization;
    }

    /// <summary>State of charge. [1]</summary>
    public Ratio Charge { get; }

    /// <summary>Voltage of one cell at rest. [V]</summary>
    public ElectricPotential OpenCircuit { get; }

    /// <summary>Resistance over that of the full cell. [1]</summary>
    public Ratio Resistance { get; }

    /// <summary>Voltage of one cell lost under load beside its resistance, or null for none. [V]</summary>
    public ElectricPotential? Polarization { get; }

    internal double ChargeShare { get; }

    internal double CellVolts { get; }

    internal double ResistanceFactor { get; }

    internal double PolarizationVolts { get; }

    /// <summary>The point in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{CellVolts:G6} V a cell at {ChargeShare * 100:G6} %");
}
