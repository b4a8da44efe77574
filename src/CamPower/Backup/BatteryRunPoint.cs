using System;
using System.Collections.Generic;
using CamPower.Sites;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower.Backup;

/// <summary>A box on battery at one moment.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BatteryRunPoint
{
    private readonly IReadOnlyList<FedDevice> _devices;
    private readonly double[] _volts;
    private readonly Battery _battery;
    private readonly double _capacityShare, _resistanceFactor;

    /// <param name="seconds">Time since the loss of the mains. [s]</param>
    /// <param name="charge">State of charge. [1]</param>
    /// <param name="railVolts">Voltage at the terminals of the box; 0 where the battery cannot carry the load. [V]</param>
    /// <param name="amperes">Current from the battery. [A]</param>
    /// <param name="devices">The devices of the box.</param>
    /// <param name="volts">The voltage at each; 0 where it is off. [V]</param>
    /// <param name="battery">The battery.</param>
    /// <param name="capacityShare">What the temperature leaves of its capacity. [1]</param>
    /// <param name="resistanceFactor">What the temperature multiplies its resistance by. [1]</param>
    internal BatteryRunPoint(double seconds, double charge, double railVolts, double amperes, IReadOnlyList<FedDevice> devices,
        double[] volts, Battery battery, double capacityShare, double resistanceFactor)
    {
        _battery = battery;
        _capacityShare = capacityShare;
        _resistanceFactor = resistanceFactor;
        Seconds = seconds;
        ChargeShare = charge;
        RailVolts = railVolts;
        Amperes = amperes;
        _devices = devices;
        _volts = volts;
    }

    /// <summary>Time since the loss of the mains.</summary>
    public Duration After => Duration.FromSeconds(Seconds);

    /// <summary>State of charge of the battery. [1]</summary>
    public Ratio Charge => Ratio.FromDecimalFractions(ChargeShare);

    /// <summary>Voltage at the terminals of the box; 0 where the battery cannot carry the load. [V]</summary>
    public ElectricPotential SupplyVoltage => ElectricPotential.FromVolts(RailVolts);

    /// <summary>Current from the battery; 0 where it cannot carry the load. [A]</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>Voltage at a device; null where it is off. [V]</summary>
    /// <param name="device">Name of a device of the box.</param>
    /// <exception cref="ArgumentNullException"><paramref name="device"/> is null.</exception>
    /// <exception cref="ArgumentException">The box feeds no such device.</exception>
    public ElectricPotential? VoltageOf(string device)
    {
        Require.NotNull(device, nameof(device));
        for (int i = 0; i < _volts.Length; i++)
        {
            if (!string.Equals(_devices[i].Device.Name, device, StringComparison.Ordinal)) continue;
            return _volts[i] > 0 ? ElectricPotential.FromVolts(_volts[i]) : null;
        }

        throw new ArgumentException($"The box feeds no device {device}.", nameof(device));
    }

    /// <summary>How the voltage of the box follows from the charge, and how fast that falls.</summary>
    /// <exception cref="InvalidOperationException">There is no voltage: the battery cannot carry the load.</exception>
    /// <example><code>Console.WriteLine(run.Points[0].Explain());</code></example>
    public Derivation Explain() => RailVolts > 0
        ? new(FormattableString.Invariant($"battery {_battery.Name}, {ChargeShare * 100:0} % charged"), Steps(), ToString())
        : throw new InvalidOperationException("There is nothing to explain: the battery cannot carry the load.");

    private IEnumerable<DerivationStep> Steps()
    {
        BatteryChemistry chemistry = _battery.Chemistry;
        double cell = chemistry.CellVoltsAt(ChargeShare), lost = cell - chemistry.CellVoltsUnderLoad(ChargeShare);
        double rest = _battery.OpenCircuitVolts(ChargeShare), ohms = _battery.OhmsAt(ChargeShare, _resistanceFactor);
        double counted = Amperes * Math.Pow(Math.Max(1, Amperes / _battery.RatedAmperes), chemistry.RateExponent - 1);
        double capacity = _battery.Capacity.AmpereHours * _capacityShare;
        yield return new("Vo", "Voltage at rest at this state of charge", "n*Vc", @"V_o = n\,V_c",
            $"{Number(_battery.Cells)}*{Number(cell)}", rest, "V", chemistry.Source);
        yield return new("Vp", "Lost under load, whatever the current", "n*Vpc", @"V_p = n\,V_{pc}",
            $"{Number(_battery.Cells)}*{Number(lost)}", _battery.Cells * lost, "V", chemistry.Source);
        yield return new("R", "Resistance: when full and at 25 °C, under a load of hours, at this charge, at this temperature",
            "R0*kl*kc*kt", @"R = R_0\,k_l\,k_c\,k_t",
            $"{Number(_battery.Resistance.Ohms)}*{Number(chemistry.LastingResistance)}*{Number(chemistry.ResistanceAtCharge(ChargeShare))}"
            + $"*{Number(_resistanceFactor)}", ohms, "Ω", chemistry.Source);
        yield return new("V", "Voltage at the box", "Vo - Vp - I*R", "V = V_o - V_p - I R",
            $"{Number(rest)} - {Number(_battery.Cells * lost)} - {Number(Amperes)}*{Number(ohms)}", RailVolts, "V", Sources.Kirchhoff);
        yield return new("Ic", "Current as it counts: more than flows above the rated current", "I*max(1, I/Ir)^(k - 1)",
            @"I_c = I\,\max(1, I/I_r)^{k - 1}",
            $"{Number(Amperes)}*max(1, {Number(Amperes)}/{Number(_battery.RatedAmperes)})^({Number(chemistry.RateExponent)} - 1)",
            counted, "A", Sources.Peukert);
        yield return new("C", "Capacity at the coldest temperature of the run", "Cr*s", @"C = C_r\,s",
            $"{Number(_battery.Capacity.AmpereHours)}*{Number(_capacityShare)}", capacity, "Ah",
            chemistry.Capacity.Source ?? chemistry.Source);
        if (Amperes > 0)
        {
            yield return new("t", "Time that the charge left would last at this current", "q*C/Ic", @"t = q\,C/I_c",
                $"{Number(ChargeShare)}*{Number(capacity)}/{Number(counted)}", ChargeShare * capacity / counted, "h", Sources.Peukert);
        }
    }

    internal double Seconds { get; }

    internal double ChargeShare { get; }

    internal double RailVolts { get; }

    internal double Amperes { get; }

    /// <summary>Time, charge, voltage and current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Seconds / Battery.SecondsAnHour:0.00} h: {ChargeShare * 100:0} %, {RailVolts:0.00} V, {Amperes:0.00} A");
}
