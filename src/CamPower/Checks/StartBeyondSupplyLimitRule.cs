using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply whose limit holds down the devices that start behind it, as it comes up or after a dip of its voltage.</summary>
internal sealed class StartBeyondSupplyLimitRule() : Rule("start-beyond-supply-limit", Severity.Failure,
    "As a supply comes up, or after a dip of its voltage, its devices draw more from their turn-on or drop-out voltages than its limit gives: they stay down, or go dark for seconds.",
    "Use a supply with a higher limit, spread the devices over two supplies, or use devices that start one after the other.", Sources.Kirchhoff)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackInConditionsOf => ["supply-above-derated-rating", "split-adapter-beyond-rating"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes.SelectMany(box =>
    {
        List<Finding> starting = [.. Of(box, c => c.StartingCurrent, "as they start", severity: null)];
        if (starting.Count == 0) starting = [.. Of(box, c => c.StartingInrush, "as their inputs charge", severity: null)];
        return starting.Count > 0 ? starting : Of(box, c => c.ReturningCurrent, "after a dip", Severity.Caution);
    });

    // After a dip alone they are dark for seconds: once they have dropped out the voltage comes back, and they start.
    private IEnumerable<Finding> Of(BoxAssessment box, Func<BoxInCondition, Judgment> judged, string when, Severity? severity) => Worst(
        from inCondition in box.InConditions
        let judgment = judged(inCondition)
        where judgment.IsViolated
        let drawn = (ElectricCurrent)judgment.Value!
        let given = (ElectricCurrent)judgment.Limit!
        orderby drawn.Amperes - given.Amperes descending
        select Find(Subject.Of(box.Box), Invariant($"Its devices draw {drawn.Amperes:0.00} A {when} in \"{inCondition.Condition}\"; its supply gives {given.Amperes:0.00} A there."),
            drawn, given, inCondition.Condition, severity));
}
