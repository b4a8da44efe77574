using System;
using UnitsNet;

namespace CamPower.Circuits;

/// <summary>Where the power of a solved network goes: what the sources deliver, what the loads take, what is lost.</summary>
/// <remarks>The default value is a network without any current. Source: <see cref="Sources.Kirchhoff"/>.</remarks>
public readonly struct PowerBalance : IEquatable<PowerBalance>
{
    private readonly double _delivered, _taken, _lost;

    internal PowerBalance(double delivered, double taken, double lost)
    {
        _delivered = delivered;
        _taken = taken;
        _lost = lost;
    }

    /// <summary>Power that the sources deliver, what their internal resistance loses included: the sum of E·I. [W]</summary>
    public Power Delivered => Power.FromWatts(_delivered);

    /// <summary>Power that the loads take: the sum of V·I. [W]</summary>
    public Power TakenByLoads => Power.FromWatts(_taken);

    /// <summary>Power lost in branches and inside the sources: the sum of I²·R. [W]</summary>
    public Power Lost => Power.FromWatts(_lost);

    /// <summary>Delivered less taken less lost: rounding only. [W]</summary>
    /// <remarks>Normally below 1e-9 of <see cref="Delivered"/>; branches of micro-ohms in a mesh, whose current is
    /// a small difference of voltages over a small resistance, raise it.</remarks>
    public Power Residual => Power.FromWatts(ResidualWatts);

    internal double DeliveredWatts => _delivered;

    internal double TakenWatts => _taken;

    internal double LostWatts => _lost;

    internal double ResidualWatts => _delivered - _taken - _lost;

    /// <inheritdoc/>
    public bool Equals(PowerBalance other) =>
        _delivered.Equals(other._delivered) && _taken.Equals(other._taken) && _lost.Equals(other._lost);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PowerBalance other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (((_delivered.GetHashCode() * 31) + _taken.GetHashCode()) * 31) + _lost.GetHashCode();

    /// <summary>The three powers in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{_delivered:0.###} W delivered = {_taken:0.###} W taken + {_lost:0.###} W lost");

    /// <summary>Whether both are the same.</summary>
    public static bool operator ==(PowerBalance left, PowerBalance right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    public static bool operator !=(PowerBalance left, PowerBalance right) => !left.Equals(right);
}
