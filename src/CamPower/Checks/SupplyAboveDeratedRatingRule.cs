using System.Collections.Generic;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply that is asked for more than it may give at the temperature in its box.</summary>
public sealed class SupplyAboveDeratedRatingRule() : Rule("supply-above-derated-rating", Severity.Failure,
    "The total of a box is above what its supply may deliver there.",
    "Use a stronger supply or one that is rated for where it stands, cool the box, or spread the load over two boxes.", Sources.GenericDerating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes)
        {
            BoxInCondition? worst = BoxTooHotRule.WorstOfTheRest(box);
            if (worst is null || !Limits.IsAbove(worst.Amperes, worst.DeratedAmperes) || SplitAdapterRule.IsSplit(box)) continue;
            yield return Find(Subject.Of(box.Box),
                Invariant($"In \"{worst.Condition}\" its outputs {(worst.IsDemandOnly ? "ask for" : "take")} {worst.Amperes:0.00} A and its supply may deliver {worst.DeratedAmperes:0.00} A at {Where(worst, evidence.Assessment.Site)}."),
                worst.TotalCurrent, worst.DeratedRating, worst.Condition);
        }
    }

    private static string Where(BoxInCondition box, Site site)
    {
        string line = box.Condition.LineVolts is double volts ? Invariant($" and {volts:0.#} V at its inlet") : string.Empty;
        string height = site.Altitude is null ? string.Empty : Invariant($", {site.AltitudeMeters:0} m above the sea");
        string inside = box.Heat is null ? string.Empty : " inside";
        return Invariant($"{box.SupplyCelsius:0.#} °C{inside}{line}{height}");
    }
}
