using System.Collections.Generic;
using CamPower.Mains;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>An outlet from which its boxes take more than may be plugged into it.</summary>
public sealed class OutletOverloadedRule() : Rule("outlet-overloaded", Severity.Danger,
    "The boxes that are plugged into an outlet take more current than may be plugged into it for good.",
    "Spread the boxes over outlets of other circuits. Work on the circuit itself is for a licensed electrician, and the local code is the last word.", Sources.NecReceptacle)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (OutletAssessment outlet in Require.NotNull(evidence, nameof(evidence)).Outlets)
        {
            OutletInCondition worst = outlet.Worst;
            if (!Limits.IsAbove(worst.KnownAmperes, outlet.Outlet.MostAmperes)) continue;
            yield return Find(Subject.Of(outlet.Outlet),
                Invariant($"In \"{worst.Condition}\" its boxes take {(worst.IsKnown ? "" : "at least ")}{worst.KnownAmperes:0.00} A at {worst.LineVoltage.Volts:0.#} V: it may carry {outlet.Outlet.MostAmperes:0.00} A, {outlet.Outlet.Share.Percent:0.#} % of its rating."),
                worst.KnownCurrent, outlet.Outlet.MostCurrent, worst.Condition);
        }
    }
}
