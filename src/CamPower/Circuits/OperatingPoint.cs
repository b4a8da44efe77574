using System;
using UnitsNet;

namespace CamPower;

/// <summary>Voltage and current at the terminals of a load that a run can feed.</summary>
/// <remarks>The default value is no operating point: 0 V, 0 A.</remarks>
public readonly struct OperatingPoint : IEquatable<OperatingPoint>
{
    private readonly double _volts, _amperes;

    internal OperatingPoint(double volts, double amperes)
    {
        _volts = volts;
        _amperes = amperes;
    }

    /// <summary>Voltage at the load. [V]</summary>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(_volts);

    /// <summary>Current in the load. [A]</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(_amperes);

    /// <summary>Power that the load takes: V·I. [W]</summary>
    public Power Power => Power.FromWatts(_volts * _amperes);

    /// <inheritdoc/>
    public bool Equals(OperatingPoint other) => _volts.Equals(other._volts) && _amperes.Equals(other._amperes);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is OperatingPoint other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (_volts.GetHashCode() * 31) + _amperes.GetHashCode();

    /// <summary>Voltage and current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{_volts:0.###} V, {_amperes:0.###} A");

    /// <summary>Whether both are the same point.</summary>
    public static bool operator ==(OperatingPoint left, OperatingPoint right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    public static bool operator !=(OperatingPoint left, OperatingPoint right) => !left.Equals(right);
}
