using System;
using UnitsNet;

namespace CamPower;

/// <summary>A draw as the label has it: a total in the worst condition, such as "12 V, 1 A".</summary>
/// <remarks>
/// Immutable. Nothing is added to a label, whatever the condition. For a switching input that means 12 W, for a linear input 1 A. For an
/// unknown input the larger of the two counts at each voltage. The check for too much voltage uses no load, because a label states no
/// minimum.
/// </remarks>
/// <example>
/// <code>
/// var draw = new LabelDraw(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(1), InputStage.Unknown);
/// </code>
/// </example>
public sealed class LabelDraw : Draw
{
    private readonly Load _load;

    /// <summary>States the label.</summary>
    /// <param name="voltage">The voltage on it, above 0. [V]</param>
    /// <param name="current">The current on it, from 0 to 1 GA, and no more than 1 GW at that voltage. [A]</param>
    /// <param name="stage">What is behind the input terminals.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, their product is above 1 GW, or the stage is none of
    /// those there are.</exception>
    public LabelDraw(ElectricPotential voltage, ElectricCurrent current, InputStage stage)
    {
        double volts = Require.Positive(voltage.Volts, nameof(voltage), "V");
        double amperes = Require.Within(current.Amperes, 0, Load.MostAmperes, nameof(current), "A");
        double watts = Require.Within(volts * amperes, 0, Load.MostWatts, nameof(current), "W");
        Voltage = voltage;
        Current = current;
        Stage = stage;
        var power = Power.FromWatts(watts);
        _load = stage switch
        {
            InputStage.Switching => Load.ConstantPower(power),
            InputStage.Linear => Load.ConstantCurrent(current),
            InputStage.Unknown => Load.LargerOf(power, current),
            _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "stage must be Unknown, Switching or Linear."),
        };
    }

    /// <summary>The voltage on the label.</summary>
    public ElectricPotential Voltage { get; }

    /// <summary>The current on the label.</summary>
    public ElectricCurrent Current { get; }

    /// <summary>Input stage of the device.</summary>
    public InputStage Stage { get; }

    /// <inheritdoc/>
    public override bool HasMotor => false;

    /// <inheritdoc/>
    public override Load Lightest => Load.None;

    /// <summary>The label's load, the same for any components.</summary>
    /// <param name="components">Not used: a label is a total.</param>
    public override Load LoadWith(LoadComponents components) => _load;

    /// <summary>The label in words, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"label {Voltage.Volts:G6} V, {Current.Amperes:G6} A ({Stage})");
}
