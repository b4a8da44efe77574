using System;
using System.Collections.Generic;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>An output of more voltage than an accessible bare part may have.</summary>
public sealed class VoltageAboveAccessibleRule() : Rule("voltage-above-accessible", Severity.Caution,
    "A supply of extra-low voltage may give more than bare parts may have that people can touch: many codes draw a line here too.",
    "Cover terminals and bare ends, work on them with the supply off, keep them dry, and ask the local code what it wants of this voltage.",
    CheckConstants.AccessibleDirectVoltage.Source)
{
    /// <summary>The highest direct voltage; the crest of an alternating one has a limit of its own.</summary>
    public override IQuantity? Limit => ElectricPotential.FromVolts(CheckConstants.AccessibleDirectVoltage.Value);

    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackFor => ["voltage-above-extra-low"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes)
        {
            SupplyOutput output = box.Box.Supply.Output;
            bool isAlternating = output is AcOutput;
            double volts = output.HighestVolts * (isAlternating ? Math.Sqrt(2) : 1), limit = (isAlternating ? CheckConstants.AccessibleCrestVoltage : CheckConstants.AccessibleDirectVoltage).Value;
            if (!Limits.IsAbove(volts, limit)) continue;
            yield return Find(Subject.Of(box.Box),
                Invariant($"It may give {volts:0.#} V{(isAlternating ? " at the crest" : " DC")}; an accessible bare part may have at most {limit:0.#} V."),
                ElectricPotential.FromVolts(volts), ElectricPotential.FromVolts(limit));
        }
    }
}
