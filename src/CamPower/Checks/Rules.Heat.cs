using System.Linq;
using CamPower.Checks;
using static System.FormattableString;

namespace CamPower;

/// <content>Rules on heat in enclosures and on the range in which models hold.</content>
public static partial class Rules
{
    /// <summary>A supply is in air that is hotter than it is rated for.</summary>
    public static Rule SupplyTooHot { get; } = new SimpleRule("supply-too-hot", Severity.Failure,
        "The air around a supply, inside its enclosure where it has one, is hotter than the supply is rated for.",
        "Move other heat sources out of the box, or shade it. Or use a larger enclosure with air around more sides. " +
        "Otherwise use a supply rated for hotter air. Do not open an outdoor enclosure to cool it.",
        Sources.GenericDerating, (rule, evidence) => evidence.Assessment.Boxes.SelectMany(box => Rule.Worst(
            from c in box.InConditions
            where c.HottestAir.IsViolated
            orderby c.SupplyCelsius descending, c.Amperes descending
            select rule.Find(Subject.Of(box.Box),
                $"The air {AirOf(box.Box, c)} is at {(c.IsInsideAtLeast ? "least " : "")}" +
                $"{Digits.Of(c.SupplyCelsius, c.HighestCelsius, "0.#")} °C " +
                Invariant($"in \"{c.Condition}\"; its supply is rated up to {Digits.Of(c.HighestCelsius, c.SupplyCelsius, "0.#")} °C."),
                c.HottestAir.Value, c.HottestAir.Limit, c.Condition))));

    /// <summary>A supply is in air that is colder than it is rated for.</summary>
    public static Rule SupplyTooCold { get; } = new SimpleRule("supply-too-cold", Severity.Failure,
        "The air around a supply, inside its enclosure where it has one, is colder than the supply is rated for.",
        "Move the box to a warmer place. Otherwise use a supply rated for colder air.",
        Sources.GenericDerating, (rule, evidence) => evidence.Assessment.Boxes.SelectMany(box => Rule.Worst(
            from c in box.InConditions
            where c.ColdestAir.IsViolated || c.ColdestStart.IsViolated
            orderby c.ColdestAir.IsViolated descending, c.ColdestAir.IsViolated ? c.SupplyCelsius : c.Condition.At.BoxCelsius
            select c.ColdestAir.IsViolated ? TooCold(rule, box.Box, c) : StartsTooCold(rule, box.Box, c))));

    /// <summary>The calculated air in an enclosure is cooler than its supply is rated for, but by less than the model's
    /// uncertainty.</summary>
    public static Rule ThinHeatMargin { get; } = new SimpleRule("thin-heat-margin", "supply nearly too hot", Severity.Caution,
        "The air in an enclosure is cooler than its supply is rated for, but by less than the uncertainty of the heat model.",
        "Measure the temperature inside on a hot day, move heat sources out of the box, or use a larger enclosure.",
        Sources.EnclosureHeatBalance, yieldsTo: ["supply-too-hot"],
        check: (rule, evidence) => evidence.Assessment.Boxes.SelectMany(box => Rule.Worst(
            from c in box.InConditions
            where c.HottestAir.IsThin || (c.HottestAir.IsViolated && c.UncertainKelvins > 0)
            orderby c.SupplyCelsius + c.UncertainKelvins descending
            select rule.Find(Subject.Of(box.Box),
                $"The air {AirOf(box.Box, c)} is at {Digits.Of(c.SupplyCelsius, c.HighestCelsius - c.UncertainKelvins, "0.0")} °C " +
                $"in \"{c.Condition}\"; policy maximum {Digits.Of(c.HighestCelsius - c.UncertainKelvins, c.SupplyCelsius, "0.0")} °C: " +
                Invariant($"{c.HighestCelsius:0.#} °C − {c.UncertainKelvins:0.0} °C, the uncertainty of the calculation."),
                c.HottestAir.Value, c.HottestAir.PolicyLimit, c.Condition))));

    /// <summary>The temperature in an enclosure is unknown, because the efficiency of a supply is not stated at its load.</summary>
    public static Rule EnclosureTemperatureUnknown { get; } = new SimpleRule("enclosure-temperature-unknown",
        "temperature in the enclosure unknown", Severity.Note,
        "The efficiency of a supply in an enclosure is not stated at its load. " +
        "The temperature inside is unknown, or only a lower bound is known. The supply is derated for cooler air.",
        "Take the efficiency from the data sheet of the supply, up to its load here, or measure the temperature inside.",
        Sources.EnclosureHeatBalance, isAboutWhatIsNotStated: true, check: (rule, evidence) =>
            from box in evidence.Assessment.Boxes
            let unknown = box.InConditions.FirstOrDefault(c => c.AreOwnLossesUnknown || c.AreOwnLossesAtLeast)
            where unknown is not null
            let place = box.Box.Cabinet is Cabinet cabinet ? cabinet.ToString() : "its enclosure"
            let bound = unknown.IsInsideUnknown ? string.Empty : Invariant($", but at least {unknown.SupplyCelsius:0.#} °C")
            select unknown.AreOwnLossesUnknown
                ? rule.Find(Subject.Of(box.Box), $"The efficiency of its supply is not stated; the temperature in {place} is unknown.")
                : rule.Find(Subject.Of(box.Box),
                    Invariant($"In \"{unknown.Condition}\" its supply gives {unknown.Amperes:0.00} A, above its last stated efficiency. ") +
                    $"The temperature in {place} is unknown{bound}.", condition: unknown.Condition));

    /// <summary>The sun shines, and no enclosure is stated for a box: the sun does not heat it in the calculation.</summary>
    /// <remarks>An adapter is left out: it counts as indoors or in the shade.</remarks>
    public static Rule SunOnBoxWithoutEnclosure { get; } = new SimpleRule("sun-on-box-without-enclosure",
        "in the sun, no enclosure stated", Severity.Note,
        "The sun shines in some condition, and no enclosure is stated for a box. The box counts as in the shade.",
        "If the box hangs in the sun, state its enclosure and sunlit area, or the temperature measured in it. In the shade, do nothing.",
        Sources.EnclosureHeatBalance, (rule, evidence) =>
            from box in evidence.Assessment.Boxes
            where box.Box.Enclosure is null && !box.Box.IsAdapter && box.Outputs.Count > 0
            let sunny = box.InConditions.Where(c => c.Condition.At.SunWattsPerSquareMeter > 0)
                .OrderByDescending(c => c.Condition.At.SunWattsPerSquareMeter).FirstOrDefault()
            where sunny is not null
            select rule.Find(Subject.Of(box.Box),
                $"The sun shines with {Digits.Of(sunny.Condition.At.SunWattsPerSquareMeter, 0, "0")} W/m² in \"{sunny.Condition}\". " +
                "Not in the site file: its enclosure. " +
                Invariant($"The box counts as in the shade, in air of {sunny.Condition.At.BoxCelsius:0.#} °C."),
                condition: sunny.Condition));

    /// <summary>A model was used outside the range in which it was compared with other figures, or in which anything is known.</summary>
    /// <remarks>
    /// It covers the temperature in an enclosure, the ampacity of a conductor smaller than published ones and its temperature in a lasting
    /// fault, and a protective device in air beyond its ambient curve. Of an enclosure, nothing is said where its supply could take twice
    /// the calculated rise. An enclosure and a smaller conductor still get an answer: the conductor counts as the smallest known one. The
    /// others get no answer, and the rules that need it say nothing.
    /// </remarks>
    public static Rule ValueOutsideValidatedRange { get; } = new ValueOutsideValidatedRangeRule();

    private static Finding TooCold(Rule rule, DistributionBox box, BoxInCondition c) => rule.Find(Subject.Of(box),
        $"The air {AirOf(box, c)} is at {Digits.Of(c.SupplyCelsius, c.LowestCelsius, "0.#")} °C in \"{c.Condition}\"; " +
        $"its supply is rated down to {Digits.Of(c.LowestCelsius, c.SupplyCelsius, "0.#")} °C.",
        c.ColdestAir.Value, c.ColdestAir.Limit, c.Condition);

    private static Finding StartsTooCold(Rule rule, DistributionBox box, BoxInCondition c)
    {
        double around = c.Condition.At.BoxCelsius;
        return rule.Find(Subject.Of(box),
            $"After an outage its supply starts at {Digits.Of(around, c.LowestCelsius, "0.#")} °C in \"{c.Condition}\"; " +
            $"it is rated down to {Digits.Of(c.LowestCelsius, around, "0.#")} °C.",
            c.ColdestStart.Value, c.ColdestStart.Limit, c.Condition, Severity.Caution);
    }

    // Where the air is that derates a supply, after "the air".
    private static string AirOf(DistributionBox box, BoxInCondition inCondition) =>
        inCondition.Heat is null ? "around it" : box.Cabinet is Cabinet cabinet ? $"in {cabinet}" : "in its enclosure";
}
