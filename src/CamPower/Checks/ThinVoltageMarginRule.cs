using System;
using System.Collections.Generic;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A device that gets less than its lowest voltage and the margin that a policy wants above it.</summary>
public sealed class ThinVoltageMarginRule : Rule
{
    private readonly double _share;

    /// <summary>The rule with 2 % of the lowest accepted voltage.</summary>
    public ThinVoltageMarginRule()
        : this(Ratio.FromPercent(CheckConstants.VoltageMargin.Value))
    {
    }

    /// <summary>The rule with a policy of your own.</summary>
    /// <param name="share">Share of the lowest accepted voltage to keep above it, from 0 to 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="share"/> is outside that range.</exception>
    public ThinVoltageMarginRule(Ratio share)
        : base("thin-voltage-margin", Severity.Caution,
            "The voltage at the device is inside its range, but close to the lowest that it accepts.",
            "Measure it in its worst condition at commissioning, or use the next thicker conductor.", CheckConstants.VoltageMargin.Source)
    {
        _share = Require.Within(share.DecimalFractions, 0, 1, nameof(share), "");
        Limit = share;
    }

    /// <inheritdoc/>
    public override IQuantity? Limit { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackFor => ["undervoltage"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (DeviceAssessment device in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices)
        {
            if (UndervoltageRule.LowestUp(device) is not DeviceInCondition lowest) continue;
            Judgment judged = lowest.LowestVoltage(Ratio.FromDecimalFractions(_share));
            if (!judged.IsThin && !judged.IsViolated) continue;
            yield return Find(Subject.Of(device.Device),
                Invariant($"It gets {lowest.UpVolts:0.00} V in \"{lowest.Condition}\"; policy minimum {((ElectricPotential)judged.PolicyLimit!).Volts:0.00} V: {lowest.Accepted!.LowestVolts:0.##} V + {_share * 100:0.##} %."),
                judged.Value, judged.PolicyLimit, lowest.Condition);
        }
    }
}
