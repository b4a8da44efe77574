using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A box in an enclosure whose supply declares no efficiency: how warm it gets inside is not known.</summary>
public sealed class BoxTemperatureUnknownRule() : Rule("box-temperature-unknown", Severity.Caution,
    "A box stands in an enclosure, and the efficiency of its supply is not declared at its load: the temperature inside is not known, or only at least, and the derating is that of cooler air.",
    "Take the efficiency of the supply from its data sheet, up to the load that it carries here, or measure the temperature inside.", Sources.EnclosureHeatBalance)
{
    /// <inheritdoc/>
    public override bool IsAboutWhatIsNotStated => true;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        foreach (BoxAssessment box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes)
        {
            BoxInCondition? unknown = box.InConditions.FirstOrDefault(c => c.AreOwnLossesUnknown || c.AreOwnLossesAtLeast);
            if (unknown is null) continue;
            string what = box.Box.Cabinet is Cabinet cabinet ? $"how warm {cabinet} gets, with all that stands in it," : "how warm the enclosure gets";
            yield return unknown.AreOwnLossesUnknown
                ? Find(Subject.Of(box.Box), $"Its supply declares no efficiency: {what} is not known.")
                : Find(Subject.Of(box.Box), Invariant($"In \"{unknown.Condition}\" its supply gives {unknown.Amperes:0.00} A, beyond the end of its declared efficiency: {what} is not known{AtLeast(unknown)}."), condition: unknown.Condition);
        }
    }

    private static string AtLeast(BoxInCondition box) => box.IsInsideUnknown ? string.Empty : Invariant($", but at least {box.SupplyCelsius:0.#} °C");
}
