using System;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>What a meter showed at a point.</summary>
/// <remarks>Immutable.</remarks>
/// <example>
/// <code>
/// var reading = new MeterReading(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "gate camera", ReadingState.Running),
///     ElectricPotential.FromVolts(11.42), time: "2026-03-09 14:10", remark: "windy");
/// </code>
/// </example>
public sealed class MeterReading
{
    /// <summary>States a reading.</summary>
    /// <param name="point">What was read, where and in which state.</param>
    /// <param name="value">What the meter showed: a voltage, current or resistance as the point is; null where it showed that the
    /// resistance is over its range.</param>
    /// <param name="meter">Which meter it was; null where that is not stated.</param>
    /// <param name="time">When it was read, as it was written down; null where that is not stated.</param>
    /// <param name="remark">What else was seen; null for nothing.</param>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <exception cref="ArgumentException">The value is of another kind than the point, or null where the point is no
    /// resistance.</exception>
    public MeterReading(ReadingPoint point, IQuantity? value, string? meter = null, string? time = null, string? remark = null)
    {
        Point = Require.NotNull(point, nameof(point));
        Value = value;
        Si = ReadingWords.UnitOf(point.Kind) switch
        {
            "V" when value is ElectricPotential volts => volts.Volts,
            "A" when value is ElectricCurrent amperes => amperes.Amperes,
            "Ω" when value is ElectricResistance ohms => ohms.Ohms,
            "Ω" when value is null => double.PositiveInfinity,
            string unit => throw new ArgumentException($"A {ReadingWords.Of(point.Kind)} needs a value in {unit}.", nameof(value)),
        };
        Meter = meter;
        Time = time;
        Remark = remark;
    }

    /// <summary>What was read, where and in which state.</summary>
    public ReadingPoint Point { get; }

    /// <summary>What the meter showed; null where it showed that the resistance is over its range.</summary>
    public IQuantity? Value { get; }

    /// <summary>Whether the meter showed that the resistance is over its range.</summary>
    public bool IsOverRange => Value is null;

    /// <summary>Which meter it was, or null where that is not stated.</summary>
    public string? Meter { get; }

    /// <summary>When it was read, as it was written down, or null where that is not stated.</summary>
    public string? Time { get; }

    /// <summary>What else was seen, or null for nothing.</summary>
    public string? Remark { get; }

    /// <summary>Point and value in the invariant culture; never throws.</summary>
    public override string ToString() => IsOverRange
        ? $"{Point}: over range"
        : FormattableString.Invariant($"{Point}: {Si:G6} {ReadingWords.UnitOf(Point.Kind)}");

    /// <summary>The value, infinite where it is over range. [V, A or Ω]</summary>
    internal double Si { get; }
}
