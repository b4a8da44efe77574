using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A box in a condition with sun that declares no enclosure: the sun does nothing to it here.</summary>
/// <remarks>An adapter is left out: it is taken to hang indoors, or in the shade of what it is plugged into.</remarks>
public sealed class SunWithoutEnclosureRule() : Rule("sun-on-box-without-enclosure", Severity.Note,
    "The sun shines in some condition, and a box declares no enclosure: it counts as standing in the shade, in the air that the condition states.",
    "If the box hangs in the sun, declare its enclosure and the area that is lit, or state the temperature that was measured in it. In the shade there is nothing to do.",
    Sources.EnclosureHeatBalance)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from box in Require.NotNull(evidence, nameof(evidence)).Assessment.Boxes
        where box.Box.Enclosure is null && !box.Box.IsAdapter && box.Outputs.Count > 0
        let sunny = box.InConditions.Where(c => c.Condition.At.SunWattsPerSquareMeter > 0).OrderByDescending(c => c.Condition.At.SunWattsPerSquareMeter).FirstOrDefault()
        where sunny is not null
        select Find(Subject.Of(box.Box),
            Invariant($"In \"{sunny.Condition}\" the sun shines with {sunny.Condition.At.SunWattsPerSquareMeter:0} W/m². It declares no enclosure and counts as standing in the shade, in air of {sunny.Condition.At.BoxCelsius:0.#} °C."),
            condition: sunny.Condition);
}
