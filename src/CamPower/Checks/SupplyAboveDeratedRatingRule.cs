using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply that is asked for more than it may give at the temperature in its box, or for anything in air that is too cold for it.</summary>
public sealed class SupplyAboveDeratedRatingRule() : Rule("supply-above-derated-rating", Severity.Failure,
    "The total of a box is above what its supply may deliver there; in air that is colder than any in which it is rated to run that is nothing.",
    "Use a stronger supply or one that is rated for where it stands; cool a box that is too warm for its supply, put one that is too cold where it is warmer; or spread the load over two boxes.",
    Sources.GenericDerating)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes)
        {
            BoxInCondition? coldest = box.InConditions.Where(c => c.IsTooCold).OrderBy(c => c.SupplyCelsius).FirstOrDefault();
            if (coldest is not null)
            {
                yield return Find(Subject.Of(box.Box), TooCold(coldest), Temperature.FromDegreesCelsius(coldest.SupplyCelsius), Temperature.FromDegreesCelsius(coldest.LowestCelsius), coldest.Condition);
            }

            BoxInCondition? worst = BoxTooHotRule.WorstOfTheRest(box);
            if (worst is null || !Limits.IsAbove(worst.Amperes, worst.DeratedAmperes) || SplitAdapterRule.IsSplit(box)) continue;
            yield return Find(Subject.Of(box.Box),
                Invariant($"In \"{worst.Condition}\" its outputs {(worst.IsDemandOnly ? "ask for" : "take")} {worst.Amperes:0.00} A and its supply may deliver {worst.DeratedAmperes:0.00} A at {Where(worst, box.Box.Supply.Output, evidence.Assessment.Site)}."),
                worst.TotalCurrent, worst.DeratedRating, worst.Condition);
        }
    }

    private static string TooCold(BoxInCondition box) => Invariant(
        $"In \"{box.Condition}\" the air {(box.Heat is null ? "around it" : "in its enclosure")} is at {box.SupplyCelsius:0.#} °C, and its supply is rated to run from {box.LowestCelsius:0.#} °C: it may not deliver the {box.Amperes:0.00} A that its outputs {(box.IsDemandOnly ? "ask for" : "take")}.");

    private static string Where(BoxInCondition box, SupplyOutput supply, Site site)
    {
        string line = box.Condition.LineVolts is double volts ? Invariant($" and {volts:0.#} V at its inlet") : string.Empty;
        string height = site.Altitude is null ? string.Empty : Invariant($", {site.AltitudeMeters:0} m above the sea");
        string inside = box.Heat is null ? string.Empty : " inside";
        string set = supply.SetAmperes < supply.RatedAmperes ? Invariant($", set to {supply.SetVolts:0.##} V by its rated power") : string.Empty;
        return Invariant($"{(box.IsInsideAtLeast ? "at least " : "")}{box.SupplyCelsius:0.#} °C{inside}{line}{height}{set}");
    }
}
