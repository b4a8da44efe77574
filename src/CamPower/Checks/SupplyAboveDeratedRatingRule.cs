using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A supply that is asked for more than it may give at the temperature in its box, or for anything in air that is too cold for it.</summary>
public sealed class SupplyAboveDeratedRatingRule() : Rule("supply-above-derated-rating", Severity.Failure,
    "The total of a box is above what its supply may deliver there.",
    "Use a stronger supply or one that is rated for where it stands; cool a box that is too warm for its supply; or spread the load over two boxes.",
    Sources.GenericDerating)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> StandsBackInConditionsOf => ["receptacle-voltage-outside-supply-range", "box-too-hot", "box-too-cold", "split-adapter-beyond-rating"];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        SiteAssessment assessment = Require.NotNull(evidence, nameof(evidence)).Assessment;
        return assessment.Boxes.SelectMany(box => Worst(Overloads(box).Select(c => Overload(box.Box, c, assessment.Site))));
    }

    /// <summary>The conditions in which a supply is asked for more than it may deliver, not being too cold for all, the worst first.</summary>
    internal static IEnumerable<BoxInCondition> Overloads(BoxAssessment box) => box.InConditions
        .Where(c => c.Load(Ratio.FromPercent(100)).IsViolated).OrderByDescending(c => c.Amperes / c.DeratedAmperes).ThenByDescending(c => c.Amperes);

    private Finding Overload(DistributionBox box, BoxInCondition worst, Site site) => Find(Subject.Of(box),
        Invariant($"Its outputs {(worst.IsDemandOnly ? "ask for" : "take")} {worst.Amperes:0.00} A in \"{worst.Condition}\"; its supply may deliver {worst.DeratedAmperes:0.00} A at {Where(worst, box.Supply.Output, site)}.{Then(worst.Rail)}"),
        worst.TotalCurrent, worst.DeratedRating, worst.Condition);

    /// <summary>What becomes of the voltage of an overloaded supply, as a sentence after a space; nothing where it stays up.</summary>
    internal static string Then(RailState rail) => rail switch
    {
        RailState.StaysUp => string.Empty,
        RailState.Dragged => " Its voltage falls.",
        RailState.Pulses => " It pulses, and its devices with it.",
        RailState.Off => " It shuts down, and its devices go dark.",
        _ => " What it does then is not stated.",
    };

    private static string Where(BoxInCondition box, SupplyOutput supply, Site site)
    {
        string line = box.Condition.LineVolts is double volts ? Invariant($" and {volts:0.#} V at its input") : string.Empty;
        string height = site.Altitude is null ? string.Empty : Invariant($", {site.AltitudeMeters:0} m above the sea");
        string inside = box.Heat is null ? string.Empty : " inside";
        string set = supply.SetAmperes < supply.RatedAmperes ? Invariant($", set to {supply.SetVolts:0.##} V by its rated power") : string.Empty;
        return Invariant($"{(box.IsInsideAtLeast ? "at least " : "")}{box.SupplyCelsius:0.#} °C{inside}{line}{height}{set}");
    }
}
