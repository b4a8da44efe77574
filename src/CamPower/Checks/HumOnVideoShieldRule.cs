using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A video shield with more voltage at mains frequency along it than a policy allows: it is seen as a bar that rolls through the picture.</summary>
/// <remarks>Of a shield nothing is known where the ripple of a supply is not stated: the rule <c>ground-loop-hum-unknown</c> names those.</remarks>
public sealed class HumOnVideoShieldRule : Rule
{
    private readonly double _volts;

    /// <summary>The rule with 10 mV RMS.</summary>
    public HumOnVideoShieldRule()
        : this(ElectricPotential.FromMillivolts(CheckConstants.ShieldHum.Value))
    {
    }

    /// <summary>The rule with a policy of your own.</summary>
    /// <param name="limit">Most RMS voltage along a shield, above 0. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is not above 0.</exception>
    public HumOnVideoShieldRule(ElectricPotential limit)
        : base("hum-on-video-shield", Severity.Caution,
            "The return current puts more voltage at mains frequency on a video shield than the policy allows: a bar rolls through the picture.",
            "Use a supply of less ripple or a thicker negative, or isolate the camera's video ground. Leave protective earth alone.", CheckConstants.ShieldHum.Source)
    {
        _volts = Require.Positive(limit.Volts, nameof(limit), "V");
        Limit = limit;
    }

    /// <inheritdoc/>
    public override IQuantity? Limit { get; }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (ShieldAssessment shield in Require.NotNull(evidence, nameof(evidence)).Assessment.Shields)
        {
            ShieldInCondition worst = shield.InConditions.OrderByDescending(s => s.MainsVolts ?? 0).First();
            if (worst.MainsVolts is not double volts || !Limits.IsAbove(volts, _volts)) continue;
            yield return Find(new Subject(SubjectKind.Device, shield.Link.Device),
                Invariant($"The {shield.Link} has {volts * 1000:0.0} mV at mains frequency in \"{worst.Condition}\"; policy maximum {_volts * 1000:0.0} mV."),
                ElectricPotential.FromVolts(volts).ToUnit(((ElectricPotential)Limit!).Unit), Limit, worst.Condition);
        }
    }
}
