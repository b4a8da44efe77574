using UnitsNet;

namespace CamPower.Supplies;

/// <summary>A battery cell at one state of charge: its open-circuit voltage and its resistance.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BatteryChargePoint
{
    /// <summary>States a point.</summary>
    /// <param name="charge">State of charge, from 0 to 1. [1]</param>
    /// <param name="openCircuit">Voltage of one cell at rest at 25 °C, above 0. [V]</param>
    /// <param name="resistance">Resistance over that of the full cell, above 0. [1]</param>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public BatteryChargePoint(Ratio charge, ElectricPotential openCircuit, Ratio resistance)
    {
        ChargeShare = Require.Within(charge.DecimalFractions, 0, 1, nameof(charge), "");
        CellVolts = Require.Positive(openCircuit.Volts, nameof(openCircuit), "V");
        ResistanceFactor = Require.Positive(resistance.DecimalFractions, nameof(resistance), "");
        Charge = charge;
        OpenCircuit = openCircuit;
        Resistance = resistance;
    }

    /// <summary>State of charge. [1]</summary>
    public Ratio Charge { get; }

    /// <summary>Voltage of one cell at rest. [V]</summary>
    public ElectricPotential OpenCircuit { get; }

    /// <summary>Resistance over that of the full cell. [1]</summary>
    public Ratio Resistance { get; }

    internal double ChargeShare { get; }

    internal double CellVolts { get; }

    internal double ResistanceFactor { get; }

    /// <summary>The point in the invariant culture; never throws.</summary>
    public override string ToString() => System.FormattableString.Invariant($"{CellVolts:G6} V a cell at {ChargeShare * 100:G6} %");
}
