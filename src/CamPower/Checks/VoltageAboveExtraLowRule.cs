using System;
using System.Collections.Generic;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>An output of more than extra-low voltage: it is no low-voltage work any more.</summary>
/// <remarks>A direct voltage is taken to be free of ripple.</remarks>
public sealed class VoltageAboveExtraLowRule : Rule
{
    private readonly double _direct, _alternating;

    /// <summary>The rule with 120 V of direct and 50 V RMS of alternating voltage.</summary>
    public VoltageAboveExtraLowRule()
        : this(ElectricPotential.FromVolts(CheckConstants.ExtraLowDirectVoltage.Value), ElectricPotential.FromVolts(CheckConstants.ExtraLowAlternatingVoltage.Value))
    {
    }

    /// <summary>The rule with limits of your own.</summary>
    /// <param name="direct">Highest direct voltage, above 0. [V]</param>
    /// <param name="alternating">Highest alternating voltage, RMS, above 0. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is not above 0, or not finite.</exception>
    public VoltageAboveExtraLowRule(ElectricPotential direct, ElectricPotential alternating)
        : base("voltage-above-extra-low", Severity.Danger,
            "A supply may give more voltage than extra-low voltage goes: insulation, enclosure and hands are those of mains work then.",
            "Do not energize: use a supply of extra-low voltage, or have the circuit planned and wired as the local code wants it for this voltage.",
            CheckConstants.ExtraLowDirectVoltage.Source)
    {
        _direct = Require.Positive(direct.Volts, nameof(direct), "V");
        _alternating = Require.Positive(alternating.Volts, nameof(alternating), "V");
        Limit = direct;
    }

    /// <summary>The highest direct voltage; alternating voltage has a limit of its own.</summary>
    public override IQuantity? Limit { get; }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes)
        {
            SupplyOutput output = box.Box.Supply.Output;
            double limit = output is AcOutput ? _alternating : _direct;
            if (!Limits.IsAbove(output.HighestVolts, limit)) continue;
            yield return Find(Subject.Of(box.Box),
                Invariant($"It may give {output.HighestVolts:0.#} V {(output is AcOutput ? "AC" : "DC")}; extra-low voltage ends at {limit:0.#} V."),
                output.HighestVoltage, ElectricPotential.FromVolts(limit));
        }
    }
}
