using System.Collections.Generic;
using CamPower.Mains;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A receptacle from which its boxes take more than may be plugged into it.</summary>
public sealed class ReceptacleOverloadedRule() : Rule("receptacle-overloaded", Severity.Danger,
    "The boxes that are plugged into a receptacle take more current than may be plugged into it for good.",
    "Spread the boxes over receptacles of other circuits. Work on the circuit itself is for a licensed electrician, and the local code is the last word.", Sources.NecReceptacle)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (ReceptacleAssessment receptacle in Require.NotNull(evidence, nameof(evidence)).Receptacles)
        {
            ReceptacleInCondition worst = receptacle.Worst;
            if (!Limits.IsAbove(worst.KnownAmperes, receptacle.Receptacle.MostAmperes)) continue;
            yield return Find(Subject.Of(receptacle.Receptacle),
                Invariant($"In \"{worst.Condition}\" its boxes take {(worst.IsKnown ? "" : "at least ")}{worst.KnownAmperes:0.00} A at {worst.LineVoltage.Volts:0.#} V: it may carry {receptacle.Receptacle.MostAmperes:0.00} A, {receptacle.Receptacle.Share.Percent:0.#} % of its rating."),
                worst.KnownCurrent, receptacle.Receptacle.MostCurrent, worst.Condition);
        }
    }
}
