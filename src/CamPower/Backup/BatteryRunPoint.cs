using System;
using System.Collections.Generic;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Backup;

/// <summary>A box on battery at one moment.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BatteryRunPoint
{
    private readonly IReadOnlyList<FedDevice> _devices;
    private readonly double[] _volts;

    internal BatteryRunPoint(
        double seconds, double charge, double railVolts, double amperes, IReadOnlyList<FedDevice> devices, double[] volts)
    {
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

    internal double Seconds { get; }

    internal double ChargeShare { get; }

    internal double RailVolts { get; }

    internal double Amperes { get; }

    /// <summary>Time, charge, voltage and current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Seconds / Battery.SecondsAnHour:0.00} h: {ChargeShare * 100:0} %, {RailVolts:0.00} V, {Amperes:0.00} A");
}
