using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Mains;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply that is plugged into a receptacle whose voltage it does not accept.</summary>
/// <remarks>Above its range it is destroyed, and may burn; below it does not run, which is a Failure.</remarks>
internal sealed class ReceptacleVoltageRule() : Rule("receptacle-voltage-outside-supply-range", Severity.Danger,
    "The voltage of a receptacle is outside the range that a supply plugged into it accepts: above it the supply is destroyed and may burn, below it the supply does not run.",
    "Unplug it. Use a supply for the voltage of the receptacle, and set a selector of the line voltage before it is plugged in.", Sources.SupplyInputVoltage)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        Require.NotNull(evidence, nameof(evidence)).Receptacles.SelectMany(receptacle => receptacle.Worst.Draws.Select(d => d.Box), (receptacle, box) => (receptacle, box))
            .SelectMany(plugged => Of(plugged.receptacle, plugged.box, d => d.HighestLine, "at most", Severity.Danger)
                .Concat(Of(plugged.receptacle, plugged.box, d => d.LowestLine, "at least", Severity.Failure)));

    private IEnumerable<Finding> Of(ReceptacleAssessment receptacle, DistributionBox box, Func<LineDraw, Judgment> judged, string bound, Severity severity) => Worst(
        from inCondition in receptacle.InConditions
        let judgment = judged(inCondition.Draws.Single(d => d.Box == box))
        where judgment.IsViolated
        let line = (ElectricPotential)judgment.Value!
        let accepted = (ElectricPotential)judgment.Limit!
        orderby Math.Abs(line.Volts - accepted.Volts) descending
        select Find(Subject.Of(box), Invariant($"Its receptacle has {line.Volts:0.#} V in \"{inCondition.Condition}\"; its supply accepts {bound} {accepted.Volts:0.#} V."),
            line, accepted, inCondition.Condition, severity));
}
