using System;
using System.Collections.Generic;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>An output of more voltage than may be touched: it is no low-voltage work any more.</summary>
public sealed class VoltageAboveExtraLowRule : Rule
{
    private readonly double _direct, _crest;

    /// <summary>The rule with 60 V of direct and 42.4 V crest of alternating voltage.</summary>
    public VoltageAboveExtraLowRule()
        : this(ElectricPotential.FromVolts(CheckConstants.ExtraLowDirectVoltage.Value), ElectricPotential.FromVolts(CheckConstants.ExtraLowCrestVoltage.Value))
    {
    }

    /// <summary>The rule with limits of your own.</summary>
    /// <param name="direct">Highest direct voltage, above 0. [V]</param>
    /// <param name="crest">Highest crest of an alternating voltage, above 0. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is not above 0, or not finite.</exception>
    public VoltageAboveExtraLowRule(ElectricPotential direct, ElectricPotential crest)
        : base("voltage-above-extra-low", Severity.Danger,
            "A supply may give more voltage than extra-low voltage allows to touch: insulation, enclosure and hands are those of mains work then.",
            "Do not energise: use a supply of extra-low voltage, or have the circuit planned and wired as the local code wants it for this voltage.",
            CheckConstants.ExtraLowDirectVoltage.Source)
    {
        _direct = Require.Positive(direct.Volts, nameof(direct), "V");
        _crest = Require.Positive(crest.Volts, nameof(crest), "V");
        Limit = direct;
    }

    /// <summary>The highest direct voltage; alternating voltage has a limit of its own.</summary>
    public override IQuantity? Limit { get; }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes)
        {
            bool isAlternating = box.Box.Supply.Output is AcOutput;
            double volts = box.Box.Supply.Output.HighestVolts * (isAlternating ? Math.Sqrt(2) : 1), limit = isAlternating ? _crest : _direct;
            if (!Limits.IsAbove(volts, limit)) continue;
            yield return Find(Subject.Of(box.Box),
                Invariant($"It may give {volts:0.#} V{(isAlternating ? " at the crest" : " DC")}, and {limit:0.#} V is the most of extra-low voltage."),
                ElectricPotential.FromVolts(volts), ElectricPotential.FromVolts(limit));
        }
    }
}
